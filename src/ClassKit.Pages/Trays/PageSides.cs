using System.Text.RegularExpressions;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Benches;
using ClassKit.Pages.Observations;
using ClassKit.Pages.Packs;

namespace ClassKit.Pages.Trays;

/// <summary>How many printed sides a page of a pack takes. Cards, run sheets, screens and what is made for one sheet are counted; running
/// text goes by its letters, of which a side holds so many at the size that the stylesheet prints that page in. No browser is asked; what
/// Chromium prints of packs, on A4 and on Letter, is held against it by tests.</summary>
internal static partial class PageSides
{
    private const int ScreensOnASide = 6;

    /// <summary>What is guessed and measured, and what is expected behind it.</summary>
    private const int SidesOfASheet = 2;

    /// <summary>Letters of text on one side, as measured on the lessons that ship.</summary>
    private static readonly Dictionary<PackEntry, int> LettersOnASide = new()
    {
        [PackContents.Guide] = 4_750,
        [PackContents.Handout] = 4_200,
        [PackContents.Rubric] = 4_000,
        [PackContents.Stations] = 3_700,
        [PackContents.Comparison] = 5_000,
        [PackContents.Requisition] = 2_600,
        [PackContents.TastingKey] = 3_000,
    };

    /// <summary>The sides of one copy; 1 or more.</summary>
    public static int Of(LessonPack pack, PackEntry entry, string html) =>
        entry == PackContents.Cards ? pack.Cards.Count + pack.Controls.Count
        : entry == PackContents.RunSheets ? OfRunSheets(pack).Sum()
        : entry == PackContents.Projector ? PartsOf(Screen().Count(html) + 2, ScreensOnASide)
        : entry == PackContents.Observations ? SidesOfASheet * TeamSheet.All(pack).Count
        : LettersOnASide.TryGetValue(entry, out var letters) ? PartsOf(PrintedLetters.Of(html), letters)
        : 1;

    /// <summary>The sides of the instructor's run sheet, then of each team's.</summary>
    public static IReadOnlyList<int> OfRunSheets(LessonPack pack) =>
        [.. RunSheets.All(pack.Bench.Plan!, pack.Class, pack.Cards).Select(RunSheetLines.SidesOf)];

    private static int PartsOf(int all, int most) => Math.Max(1, (all + most - 1) / most);

    [GeneratedRegex("<section class=\"screen")]
    private static partial Regex Screen();
}
