using ClassKit.Exercises.Cohorts;

namespace ClassKit.Pages.Layout;

/// <summary>Asks the printer for the class's paper; without one, whatever lies in the printer is right.</summary>
internal static class PaperRule
{
    /// <summary>
    /// Letter is 18 mm shorter than A4 and 6 mm wider: with these margins as much goes on a side, and the last line of a page stays on it.
    /// </summary>
    private const string LetterMargins = " margin: 12mm 13mm 10mm;";

    /// <summary>Six screens take as much of a sheet as on A4.</summary>
    private const string LetterScreens = " margin: 12mm 5mm;";

    /// <summary>
    /// Page rules that name the paper (CSS Paged Media 3, <c>size</c>), also for the pages that the stylesheet turns on their side.
    /// </summary>
    public static string Css(Paper? paper) =>
        paper is { } known
            ? $"@page {{ size: {Name(known)};{(known == Paper.Letter ? LetterMargins : "")} }} @page grid {{ size: {Name(known)} landscape; }} @page screens {{ size: {Name(known)} landscape;{(known == Paper.Letter ? LetterScreens : "")} }}"
            : "";

    private static string Name(Paper paper) =>
        paper switch
        {
            Paper.A4 => "A4",
            Paper.Letter => "letter",
        };
}
