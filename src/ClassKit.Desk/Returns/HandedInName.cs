using System.Text;

namespace ClassKit.Desk.Returns;

/// <summary>
/// The name under which a file that was handed in is kept: what its browser called it, without anything that leads elsewhere.
/// </summary>
internal static class HandedInName
{
    private const int MostSteps = 8;

    /// <summary>Of one step in UTF-8: file systems take 255, and " (1000)" may still come to it.</summary>
    private const int MostBytes = 200;

    /// <summary>Signs that no system has in names, or that would hide a file, end a name or turn it around.</summary>
    private static bool IsBad(Rune rune) =>
        Rune.IsControl(rune)
        || rune.Value
            is '<'
                or '>'
                or ':'
                or '"'
                or '|'
                or '?'
                or '*'
                or 0x061C
                or 0x200E
                or 0x200F
                or (>= 0x202A and <= 0x202E)
                or (>= 0x2066 and <= 0x2069)
        || rune == Rune.ReplacementChar;

    /// <summary>The path below the folder of what came back, with forward slashes; never empty.</summary>
    public static string Of(string sent)
    {
        var steps = sent.Split('/', '\\').Select(Step).Where(step => step.Length > 0).ToList();
        return steps.Count == 0 ? "file" : string.Join('/', steps.TakeLast(MostSteps));
    }

    private static string Step(string step)
    {
        var clean = new StringBuilder();
        foreach (var rune in step.EnumerateRunes())
            clean.Append(IsBad(rune) ? "_" : rune.ToString());
        var plain = clean.ToString().Trim(' ', '.');
        if (Encoding.UTF8.GetByteCount(plain) <= MostBytes)
            return plain;
        var ending = Path.GetExtension(plain) is { Length: < 10 } known ? known : "";
        return Cut(plain, MostBytes - Encoding.UTF8.GetByteCount(ending)) + ending;
    }

    /// <summary>As many whole letters as go into a number of bytes.</summary>
    private static string Cut(string text, int bytes)
    {
        var cut = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if ((bytes -= rune.Utf8SequenceLength) < 0)
                break;
            cut.Append(rune.ToString());
        }
        return cut.ToString().TrimEnd(' ', '.');
    }
}
