using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;
using ClassKit.Wording.Counts;

namespace ClassKit.Workbooks.Dealing;

/// <summary>What a student is told before starting. The sentences on credit say what the marking scheme does.</summary>
internal static class Instructions
{
    /// <param name="marking">How outcomes become points.</param>
    /// <param name="first">The tag of the first answer cell.</param>
    /// <param name="exercises">What was dealt, which no example may answer.</param>
    /// <param name="oneSheet">True if all exercises stand on one sheet.</param>
    public static IReadOnlyList<string> For(MarkingScheme marking, string first, IEnumerable<Exercise> exercises, bool oneSheet)
    {
        List<string> steps =
        [
            $"{(oneSheet ? "All exercises stand below one another on the second tab at the bottom" : "Every tab at the bottom is one exercise")}. Read the problem, then fill the cells in the thick frame, from {first} on.",
            $"Answer with a formula that uses the given cells: type = and click the cells. So {ExampleFormula.For(exercises).Text}. {Typed(marking)}",
        ];
        if (exercises.Any(exercise => exercise.Parts.Any(part => part.Choice is not null)))
            steps.Add(
                "Where lettered answers stand to choose from, pick your letter from the answer cell's list or type it. No formula is asked there."
            );
        if (exercises.Any(exercise => exercise.Parts.Any(part => part.InWords is not null)))
            steps.Add(
                "Where your own words are asked, write two or three sentences into the large cell. Your instructor reads them and gives the points."
            );
        if (marking.FollowThroughShare > 0)
            steps.Add("A later answer may use an earlier one of yours. " + FollowThrough(marking));
        steps.AddRange([
            "Type numbers without a unit: the unit stands beside the cell. Use the decimal sign of your own program, and do not round on the way; the note beside each cell says how exact an answer must be.",
            "A cell that shows 1 % holds the number 0.01: use it in a formula as it is, with no dividing by 100. To type a percentage yourself, type it with its sign: 1%.",
            "The scratch area is free for your working. You may also insert rows, change widths, or paste a picture. Leave the given values and the names of the tabs as they are.",
            "Save as .xlsx (Excel workbook), under any file name, and hand in this one file. Your name and id above tell whose it is.",
        ]);
        return steps;
    }

    private static string Typed(MarkingScheme marking) =>
        marking.AccuracyShare switch
        {
            >= 1 => "A right number typed by hand counts as well, but shows no method.",
            <= 0 => "Where a formula is asked, a number typed by hand earns nothing, even if it is right.",
            _ => $"Where a formula is asked, a right number typed by hand earns {Percent.Of(marking.AccuracyShare)} of the points.",
        };

    private static string FollowThrough(MarkingScheme marking) =>
        marking.FollowThroughShare >= 1
            ? "If the earlier one is wrong and the later method is right, the later answer still earns its points."
            : $"If the earlier one is wrong and the later method is right, the later answer still earns {Percent.Of(marking.FollowThroughShare)} of its points.";
}
