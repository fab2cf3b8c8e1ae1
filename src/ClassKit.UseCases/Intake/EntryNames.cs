using System.Globalization;

namespace ClassKit.UseCases.Intake;

/// <summary>
/// The names in an archive as they are shown: nothing is ever written there, but a report should not speak of places outside, nor of two
/// files by one name.
/// </summary>
internal sealed class EntryNames
{
    /// <summary>Longer steps than file systems take are cut in the middle of what is shown.</summary>
    private const int LongestStep = 255;

    private readonly Dictionary<string, int> _times = new(StringComparer.Ordinal);
    private readonly HashSet<string> _shown = new(StringComparer.Ordinal);

    /// <summary>The name of the next entry.</summary>
    public string Shown(string name)
    {
        var steps = name.Replace('\\', '/')
            .Split('/', StringSplitOptions.RemoveEmptyEntries)
            .Where(step => step is not ("." or ".."))
            .Select(Cut);
        var first = string.Join('/', steps) is { Length: > 0 } some ? some : "a file without a name";
        var ending = Path.GetExtension(first);
        var shown = first;
        var times = _times.GetValueOrDefault(first, 1);
        while (!_shown.Add(shown))
            shown = string.Create(CultureInfo.InvariantCulture, $"{first[..^ending.Length]} ({++times}){ending}");
        _times[first] = times;
        return shown;
    }

    private static string Cut(string step) =>
        step.Length <= LongestStep ? step : $"{step[..(LongestStep / 2)].TrimEnd(Halves)}…{step[^(LongestStep / 2)..].TrimStart(Halves)}";

    /// <summary>Halves of characters that a cut may leave.</summary>
    private static readonly char[] Halves = [.. Enumerable.Range(0xD800, 0x800).Select(code => (char)code)];
}
