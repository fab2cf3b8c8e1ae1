using System.Text.RegularExpressions;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>The lines of one printed side, from top to foot, without the running head and the number of the page.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Count">How many sides there are.</param>
/// <param name="Lines">What stands on it, blanks drawn together.</param>
internal sealed partial record PrintedSide(int Number, int Count, IReadOnlyList<string> Lines)
{
    /// <summary>A side of its own for less is a mistake of the page's.</summary>
    private const int FewestLines = 4;

    /// <summary>The sides of a text that ends every one with a form feed.</summary>
    public static IReadOnlyList<PrintedSide> Of(string text)
    {
        var sides = text.Split('\f')[..^1]
            .Select(side => side.Split('\n').Select(Plain).Where(line => line.Length > 0 && !PageNumber().IsMatch(line)).ToList())
            .ToList();
        // The running head is the line that every side but the first begins with.
        var head =
            sides.Count > 2 && sides.Skip(1).Select(side => side.FirstOrDefault()).Distinct().Count() == 1
                ? sides[1].FirstOrDefault()
                : null;
        return
        [
            .. sides.Select(
                (side, at) => new PrintedSide(at + 1, sides.Count, head is not null && side.FirstOrDefault() == head ? side[1..] : side)
            ),
        ];
    }

    /// <summary>What a printer would see.</summary>
    /// <param name="headings">The page's headings and heads of tables.</param>
    public IEnumerable<string> Faults(IEnumerable<string> headings)
    {
        if (Lines.Count > 0 && Number < Count && headings.Select(Plain).FirstOrDefault(heading => heading == Lines[^1]) is { } alone)
            yield return $"side {Number} of {Count} ends with the heading “{alone}”";
        if (Number == Count && Count > 1 && Lines.Count is > 0 and < FewestLines)
            yield return $"the last of {Count} sides holds {Lines.Count} lines: “{string.Join(" / ", Lines)}”";
    }

    private static string Plain(string text) => Blanks().Replace(text, " ").Trim();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"^\d+ ?(/|of) ?\d+$")]
    private static partial Regex PageNumber();
}
