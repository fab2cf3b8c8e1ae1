using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Packs;

/// <summary>The pages of a lesson pack, in the order in which an instructor needs them.</summary>
public static class PackContents
{
    /// <summary>What the pack holds.</summary>
    public static PackEntry Index { get; } = new("index.html", "Contents", "", "", Readers.Everybody);

    /// <summary>The guide.</summary>
    public static PackEntry Guide { get; } =
        new(
            "guide.html",
            "Instructor guide",
            "Timing, talking points, common failures, model answers, cautions, and who must keep away from what.",
            "For you alone. Read it the day before.",
            Readers.InstructorAlone
        );

    /// <summary>The requisition.</summary>
    public static PackEntry Requisition { get; } =
        new(
            "requisition.html",
            "Requisition",
            "What to buy for the class, in packs and with prices; what each bread takes of it; what its ingredients are declared to hold.",
            "Hand it to whoever orders, some days before.",
            Readers.WhoeverOrders
        );

    /// <summary>The requisition workbook.</summary>
    public static PackEntry RequisitionWorkbook { get; } =
        new(
            "requisition.xlsx",
            "Requisition as a workbook",
            "The same with live sums.",
            "Change students, prices or what is in the store: packs and sums follow.",
            Readers.WhoeverOrders
        );

    /// <summary>The stations.</summary>
    public static PackEntry Stations { get; } =
        new(
            "stations.html",
            "Station lists",
            "What to set out at every bench and on your table; burners, proofing places and ovens in use at once.",
            "Print once, and tick off while setting up.",
            Readers.Everybody
        );

    /// <summary>The observations.</summary>
    public static PackEntry Observations { get; } =
        new(
            "observations.html",
            "Observation sheet",
            "Lines for everybody's guess, a grid for what each bread measures, room to draw the cut; behind it what is expected, and what a difference asks.",
            "Print one for each team, on both sides.",
            Readers.Everybody
        )
        {
            PrintedFor = PrintedFor.EachTeam,
        };

    /// <summary>The observation workbook.</summary>
    public static PackEntry ObservationWorkbook { get; } =
        new(
            "observations.xlsx",
            "Observation sheet as a workbook",
            "The same with live differences; the question appears when there is one.",
            "One for each team with a computer at hand.",
            Readers.Everybody
        );

    /// <summary>The tasting.</summary>
    public static PackEntry Tasting { get; } =
        new(
            "tasting.html",
            "Tasting sheet",
            "The breads behind numbers, to judge on scales, and a triangle test: three samples, of which one is odd.",
            "Print one for each student who tastes.",
            Readers.Everybody
        )
        {
            PrintedFor = PrintedFor.EachStudent,
        };

    /// <summary>The tasting key.</summary>
    public static PackEntry TastingKey { get; } =
        new(
            "tasting-key.html",
            "Tasting key",
            "What stands behind each number, who gets which samples, how many right answers show a difference, cautions.",
            "For you alone, until the last answer is in.",
            Readers.InstructorAlone
        );

    /// <summary>The tasting workbook.</summary>
    public static PackEntry TastingWorkbook { get; } =
        new(
            "tasting.xlsx",
            "Tasting as a workbook",
            "What the class found: means on every scale, and whether the triangle test shows a difference.",
            "Type the students’ answers into it; they follow as you type.",
            Readers.InstructorAlone
        );

    /// <summary>The rubric.</summary>
    public static PackEntry Rubric { get; } =
        new(
            "rubric.html",
            "Rubric sheet",
            "How work at the bench is judged: criteria and levels with boxes to tick.",
            "Print one for each team and mark it while they work; show it to students before.",
            Readers.Everybody
        )
        {
            PrintedFor = PrintedFor.EachTeam,
        };

    /// <summary>The projector.</summary>
    public static PackEntry Projector { get; } =
        new(
            "projector.html",
            "Projector pages",
            "The demonstrations and questions in big type, one idea a screen.",
            "Open it on the projector; it prints six to a sheet.",
            Readers.Everybody
        );

    /// <summary>The handout.</summary>
    public static PackEntry Handout { get; } =
        new(
            "handout.html",
            "Student handout",
            "What the class is about, its words, the cautions, questions to talk about.",
            "Print one for each student.",
            Readers.Everybody
        )
        {
            PrintedFor = PrintedFor.EachStudent,
        };

    /// <summary>The cards.</summary>
    public static PackEntry Cards { get; } =
        new(
            "formula-cards.html",
            "Formula cards",
            "One sheet for each bread: weights for one team, method, temperatures, equipment, allergens, cautions.",
            "Print one set for each team; each card begins on a sheet of its own and fits it, unless much was changed for the class.",
            Readers.Everybody
        )
        {
            PrintedFor = PrintedFor.EachTeam,
        };

    /// <summary>The comparison.</summary>
    public static PackEntry Comparison { get; } =
        new(
            "comparison.html",
            "Comparing the leavenings",
            "The leavenings side by side, and their gas computed from the formulas.",
            "For the talk after the tasting; print it for students afterwards if you like.",
            Readers.Everybody
        );

    /// <summary>The bench.</summary>
    public static PackEntry Bench { get; } =
        new(
            "bench-plan.html",
            "Bench plan",
            "Who does what when: shifts, demonstrations, ovens; as a drawing, on the screen as tables too.",
            "Look at it before you change teams, ovens or the period; hang it up for all to see.",
            Readers.Everybody
        );

    /// <summary>The plan as lists to tick off.</summary>
    public static PackEntry RunSheets { get; } =
        new(
            "run-sheets.html",
            "Run sheets",
            "The plan as lists to tick off: one for you, one for each team.",
            "Print once: each team gets its sheet, the first one is yours.",
            Readers.Everybody
        );

    /// <summary>The pages of a pack: where no plan could be made there are no run sheets.</summary>
    public static IReadOnlyList<PackEntry> Of(LessonPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return
        [
            Index,
            Guide,
            Requisition,
            Stations,
            Bench,
            .. pack.Bench.Plan is null ? Array.Empty<PackEntry>() : [RunSheets],
            Handout,
            Cards,
            Observations,
            Tasting,
            TastingKey,
            Comparison,
            Projector,
            Rubric,
        ];
    }

    /// <summary>The workbooks beside the pages.</summary>
    public static IReadOnlyList<PackEntry> Workbooks { get; } = [RequisitionWorkbook, ObservationWorkbook, TastingWorkbook];
}
