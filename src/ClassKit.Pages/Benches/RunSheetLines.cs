namespace ClassKit.Pages.Benches;

/// <summary>
/// How much of paper a run sheet takes in letters of ten points: closer lines before a second side, never smaller letters.
/// </summary>
internal static class RunSheetLines
{
    /// <summary>With room to tick between them. As measured on Letter on its side, 190 mm high.</summary>
    private const int Roomy = 27;

    /// <summary>As close as they can be read.</summary>
    private const int Close = 36;

    /// <summary>So many characters of a note stand on a line, at the smaller of the two papers. By eye.</summary>
    private const int NoteLine = 60;

    /// <summary>The same of what is to be done.</summary>
    private const int WhatLine = 42;

    private const int ShortBread = 34;

    /// <summary>The same of breads that go through a door together.</summary>
    private const int BreadLine = 46;

    /// <summary>True of what stays on one line beside the rest.</summary>
    public static bool IsShort(string bread) => bread.Length <= ShortBread;

    /// <summary>The lines of a sheet: what is longer than its column takes a second one.</summary>
    public static int Of(IReadOnlyList<RunEntry> entries) =>
        entries.Sum(entry =>
            1 + new[] { entry.Note.Length / NoteLine, entry.What.Length / WhatLine, entry.Bread.Length / BreadLine }.Max()
        );

    /// <summary>The printed sides: 1 or more.</summary>
    public static int SidesOf(IReadOnlyList<RunEntry> entries) => Math.Max(1, (Of(entries) + Close - 1) / Close);

    /// <summary>The classes of its table.</summary>
    public static string Style(IReadOnlyList<RunEntry> entries) => Of(entries) is > Roomy and <= Close ? "compact close" : "compact";
}
