using System.Text.RegularExpressions;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Benches;
using ClassKit.Pages.Packs;

namespace ClassKit.Pages.Trays;

/// <summary>How many printed sides a page of a pack takes. Cards, run sheets, screens and what is made for one sheet are counted; running text goes by its letters, of which a side holds so many at the
/// size that the stylesheet prints that page in. No browser is asked; what Chromium prints of packs, on A4 and on Letter, is held against it by tests.</summary>
internal static partial class PageSides
{
    private const int ScreensOnASide = 6;

    /// <summary>The instructor's run sheet gets smaller with more lines, and from so many on takes a second side.</summary>
    private const int LinesOfARunSheet = 45;

    /// <summary>Letters of text on one side, as measured on the lessons that ship.</summary>
    private static readonly Dictionary<PackEntry, int> LettersOnASide = new()
    {
        [PackContents.Guide] = 4_750,
        [PackContents.Handout] = 4_200,
        [PackContents.Rubric] = 4_000,
        [PackContents.Stations] = 3_300,
        [PackContents.Comparison] = 8_000,
        [PackContents.Requisition] = 2_600,
        [PackContents.TastingKey] = 2_400,
    };

    /// <summary>The sides of one copy; 1 or more.</summary>
    public static int Of(LessonPack pack, PackEntry entry, string html) =>
        entry == PackContents.Cards ? pack.Cards.Count + pack.Controls.Count
        : entry == PackContents.RunSheets ? pack.Class.Teams + (RunSheets.Instructor(pack.Bench.Plan!, pack.Class, pack.Cards).Count > LinesOfARunSheet ? 2 : 1)
        : entry == PackContents.Projector ? PartsOf(Screen().Count(html) + 2, ScreensOnASide)
        : entry == PackContents.Observations ? 2
        : LettersOnASide.TryGetValue(entry, out var letters) ? PartsOf(LettersOf(html), letters)
        : 1;

    private static int LettersOf(string html) => Blanks().Replace(Markup().Replace(Unprinted().Replace(html, ""), " "), " ").Length;

    private static int PartsOf(int all, int most) => Math.Max(1, (all + most - 1) / most);

    [GeneratedRegex("<section class=\"screen")]
    private static partial Regex Screen();

    [GeneratedRegex("<style>.*?</style>|<nav .*?</nav>", RegexOptions.Singleline)]
    private static partial Regex Unprinted();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Markup();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
