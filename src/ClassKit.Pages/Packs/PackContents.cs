using ClassKit.Lessons;

namespace ClassKit.Pages.Packs;

/// <summary>The pages of a lesson pack, in the order in which an instructor needs them.</summary>
internal static class PackContents
{
    public static PackEntry Index { get; } = new("index.html", "Contents", "", "");

    public static PackEntry Guide { get; } = new(
        "guide.html", "Instructor guide",
        "Timing, talking points, common failures, model answers, cautions.",
        "For you alone. Read it the day before.");

    public static PackEntry Requisition { get; } = new(
        "requisition.html", "Requisition",
        "What to buy for the class, in packs and with prices; what each bread takes of it; allergens.",
        "Hand it to whoever orders, some days before.");

    public static PackEntry RequisitionWorkbook { get; } = new(
        "requisition.xlsx", "Requisition as a workbook",
        "The same with live sums.",
        "Change students, prices or what is in the store: packs and sums follow.");

    public static PackEntry Handout { get; } = new(
        "handout.html", "Student handout",
        "What the class is about, its words, the cautions, a sheet to write observations on.",
        "Print one for each student.");

    public static PackEntry Cards { get; } = new(
        "formula-cards.html", "Formula cards",
        "One sheet for each bread: weights for one team, method, temperatures, equipment, allergens, cautions.",
        "Print one set for each team; each card fills one sheet of A4 or Letter.");

    public static PackEntry Comparison { get; } = new(
        "comparison.html", "Comparing the leavenings",
        "The leavenings side by side, and their gas computed from the formulas.",
        "For the talk after the tasting; print it for students afterwards if you like.");

    public static PackEntry Bench { get; } = new(
        "bench-plan.html", "Bench plan",
        "Who does what when, as a drawing and as tables: shifts, demonstrations, ovens.",
        "Look at it before you change teams, ovens or the period; hang it up for all to see.");

    public static PackEntry RunSheets { get; } = new(
        "run-sheets.html", "Run sheets",
        "The plan as lists to tick off: one for you, one for each team.",
        "Print once: each team gets its sheet, the first one is yours.");

    /// <summary>The pages of a pack: without a bench plan those that tell of it are left out.</summary>
    public static IReadOnlyList<PackEntry> Of(LessonPack pack) =>
    [
        Index, Guide, Requisition,
        .. pack.Bench is null ? Array.Empty<PackEntry>() : [Bench],
        .. pack.Bench?.Plan is null ? Array.Empty<PackEntry>() : [RunSheets],
        Handout, Cards, Comparison,
    ];

    /// <summary>The workbooks beside the pages.</summary>
    public static IReadOnlyList<PackEntry> Workbooks { get; } = [RequisitionWorkbook];
}
