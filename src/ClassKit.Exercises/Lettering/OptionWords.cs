using System.Text;

namespace ClassKit.Exercises.Lettering;

/// <summary>An option's words as they are compared: letters and digits in lower case, one space between words.</summary>
public static class OptionWords
{
    /// <summary>The text without case, signs and spare spaces.</summary>
    public static string Folded(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var folded = new StringBuilder(text.Length);
        foreach (var character in text)
        {
            if (char.IsLetterOrDigit(character))
                folded.Append(char.ToLowerInvariant(character));
            else if (folded.Length > 0 && folded[^1] != ' ')
                folded.Append(' ');
        }
        return folded.ToString().TrimEnd();
    }
}
