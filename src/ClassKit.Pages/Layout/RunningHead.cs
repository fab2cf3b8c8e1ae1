using System.Globalization;
using System.Text;

namespace ClassKit.Pages.Layout;

/// <summary>The line at the head of every printed sheet, so that sheets of different students can be told apart on a desk.</summary>
internal static class RunningHead
{
    /// <summary>A page rule that prints the text in the top margin.</summary>
    /// <param name="text">The words.</param>
    /// <param name="onFirst">True on the first side too: of a page that does not print its heading.</param>
    public static string Css(string text, bool onFirst = false) =>
        $"@page {{ @top-left {{ content: {Quoted(text)}; }} }}{(onFirst ? $" @page :first {{ @top-left {{ content: {Quoted(text)}; }} }}" : "")}";

    /// <summary>The same for whoever reads large print: whose sheet it is and its number, as large as the text.</summary>
    /// <param name="text">The words, few enough for one line.</param>
    public static string Large(string text) =>
        $"{Css(text)} @page {{ @top-left {{ font-size: 16pt; padding-bottom: 2mm; }} @bottom-right {{ font-size: 16pt; }} }}";

    /// <summary>A CSS string (CSS Syntax 3, 4.3.7): everything but letters, digits and spaces is escaped by its code point,
    /// so that no name can end the string or the style element.</summary>
    private static string Quoted(string text)
    {
        var css = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune) || rune.Value == ' ')
                css.Append(rune);
            else
                css.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x} ");
        }
        return css.Append('"').ToString();
    }
}
