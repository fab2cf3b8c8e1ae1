using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>A class of invented people, what they were dealt, and how they did: every outcome, status and kind of file occurs.</summary>
internal static class SampleClass
{
    private static readonly string[] Names =
    [
        "Ana-Sofía Núñez",
        "Bjørn Håkansson",
        "Chloë D’Arcy-O’Neill",
        "Dilnoza Yusupova",
        "Ewa Żółkiewska",
        "Farid El-Amrani",
        "Grace Mbeki",
        "Hiro Tanabe",
        "Ilse van der Meer",
        "José Peña",
        "Kateřina Dvořáková",
        "Lý Thị Hoa",
    ];

    public static DealtClass Dealt { get; } =
        new(
            "rise",
            "How Small Breads Rise",
            "Pastry Arts, section B",
            2026,
            new("points", "Points for calculations", 0.5m, 1, 0, 0.6m),
            SampleExercises.All,
            [.. Names.Select(Deal)]
        );

    public static ClassGrades Grades { get; } =
        new(
            Dealt,
            [.. Dealt.Students.Select(Grade)],
            [
                new("notes/timetable.pdf", "00", null, FileFate.Refused, null, new Uncounted.NotRead(new Refusal.OtherKind(FileKind.Pdf))),
                new(
                    "copy of practice (1).xlsx",
                    "01",
                    null,
                    FileFate.OtherVersion,
                    null,
                    new Uncounted.OtherVersion(new("s07", "Grace Mbeki"), 3, 10, new("s07.xlsx"), new WhyThatVersion.EarnsMost())
                ),
            ]
        );

    public static ClassSummary Summary { get; } = ClassSummarizer.Summarize(Grades);

    private static DealtStudent Deal(string name, int index)
    {
        var id = "s" + (index + 1).ToString("00", System.Globalization.CultureInfo.InvariantCulture);
        var variants = SampleExercises.All.Select(exercise => Draw(exercise, index)).ToList();
        return new(new(id, name), $"workbooks/{id}.xlsx", variants);
    }

    private static Variant Draw(Exercise exercise, int index)
    {
        var values = exercise.Givens.ToDictionary(given => given.Id, given => given.ValueAt((index * 5 + given.Id.Length) % given.Count));
        return new(exercise, values, Expected(exercise, values).ToDictionary(answer => answer.Part, answer => answer.Value));
    }

    /// <summary>The three exercises computed by hand, so that these samples need no evaluator.</summary>
    private static IEnumerable<(string Part, double Value)> Expected(Exercise exercise, Dictionary<string, decimal> given)
    {
        double Of(string id) => (double)given[id];
        if (exercise == SampleExercises.Hydration)
        {
            var water = Of("flour") * Of("hydration");
            var dough = Of("flour") + water + Of("flour") * Of("salt");
            return [("water", water), ("dough", dough), ("share", water / dough)];
        }
        if (exercise == SampleExercises.WaterTemperature)
        {
            var water = 3 * Of("desired") - (Of("room") + Of("flour_temp") + Of("friction"));
            return [("water_temp", water), ("ice", 10 * Math.Max(0, 18 - water) / 98)];
        }
        return [("mixed", Of("pieces") * Of("mass") / (1 - Of("loss")))];
    }

    private static StudentGrade Grade(DealtStudent student, int index) =>
        index switch
        {
            7 => new(student.Who, GradeStatus.Missing, null, [], []),
            8 => new(
                student.Who,
                GradeStatus.Unreadable,
                "s09 final.xlsx",
                [],
                [new Flag.UnreadableFile(new("s09 final.xlsx"), new Refusal.CutOff())]
            ),
            _ => new(student.Who, GradeStatus.Graded, $"{student.Who.Id}.xlsx", [.. Answers(student, index)], Flags(index)),
        };

    private static IReadOnlyList<Flag> Flags(int index) =>
        index switch
        {
            2 => [new Flag.GivenOverwritten(new(new("Hydration", 2, 3), IsOwnSheet: false), "Flour", 950, new("1000"))],
            5 => [new Flag.SharedAuthor([new("s07", "Grace Mbeki")])],
            _ => [],
        };

    private static IEnumerable<AnswerGrade> Answers(DealtStudent student, int index)
    {
        var number = 0;
        foreach (var exercise in SampleExercises.All)
        {
            var expected = student.AnswersOf(exercise.Id);
            foreach (var part in exercise.Parts)
                yield return Answer(exercise, part, expected, OutcomeOf(index, number), number++);
        }
    }

    /// <summary>Mostly right, except that the fourth part (water temperature) went badly: so there is something to teach again.</summary>
    private static Outcome OutcomeOf(int index, int number) =>
        number switch
        {
            3 when index % 4 != 0 => index % 4 == 3 ? Outcome.Incorrect : Outcome.Misconception,
            4 when index % 4 == 1 => Outcome.FollowThrough,
            _ when (index + number) % 3 == 0 => (Outcome)((index * 3 + number) % 8),
            _ => Outcome.Sound,
        };

    private static AnswerGrade Answer(
        Exercise exercise,
        Part part,
        IReadOnlyDictionary<string, double> expected,
        Outcome outcome,
        int number
    )
    {
        var right = expected[part.Id];
        if (outcome is Outcome.Misconception && part.Misconceptions.Count == 0)
            outcome = Outcome.Incorrect;
        if (outcome == Outcome.FollowThrough && part == exercise.Parts[0])
            outcome = Outcome.Sound;
        var earlier =
            outcome == Outcome.FollowThrough
                ? new Dictionary<string, double> { [exercise.Parts[0].Id] = expected[exercise.Parts[0].Id] * 1.1 }
                : [];
        var formula = $"=C{number + 2}*C{number + 3}";
        return outcome switch
        {
            Outcome.Sound => new(
                exercise,
                part,
                outcome,
                part.Points,
                part.Points,
                CellValue.FromNumber(right),
                right,
                part.FormulaAsked ? formula : null,
                [part.FormulaAsked ? new AnswerFinding.Right() : new AnswerFinding.RightTyped()],
                earlier
            ),
            Outcome.ValueOnly => new(
                exercise,
                part,
                outcome,
                part.Points / 2,
                part.Points,
                CellValue.FromNumber(right),
                right,
                null,
                [new AnswerFinding.RightTyped()],
                earlier
            ),
            Outcome.FollowThrough => new(
                exercise,
                part,
                outcome,
                part.Points,
                part.Points,
                CellValue.FromNumber(right * 1.08),
                right,
                formula,
                [new AnswerFinding.FollowsThrough([exercise.Parts[0]], MethodShown: true)],
                earlier
            ),
            Outcome.Misconception => new(
                exercise,
                part,
                outcome,
                0,
                part.Points,
                CellValue.FromNumber(right * 0.6),
                right,
                formula,
                [new AnswerFinding.WrongTurn(part.Misconceptions[0])],
                earlier
            ),
            Outcome.Incorrect => new(
                exercise,
                part,
                outcome,
                0,
                part.Points,
                CellValue.FromError(CellError.DivideByZero),
                right,
                "=C4/C9",
                [new AnswerFinding.ErrorValue(CellError.DivideByZero)],
                earlier
            ),
            Outcome.Blank => new(
                exercise,
                part,
                outcome,
                0,
                part.Points,
                CellValue.Blank,
                right,
                null,
                [new AnswerFinding.Empty("C12")],
                earlier
            ),
            Outcome.Unreadable => new(
                exercise,
                part,
                outcome,
                0,
                part.Points,
                CellValue.FromText("about <b>half</b> & a bit"),
                right,
                null,
                [new AnswerFinding.NoNumber(UnreadableKind.NoDigit, new("about <b>half</b> & a bit"), 24, new(""), 1)],
                earlier
            ),
            Outcome.Unsupported => new(
                exercise,
                part,
                outcome,
                0,
                0,
                CellValue.Blank,
                right,
                "=LAMBDA(x,x*2)(C4)",
                [new AnswerFinding.NotEvaluated(new Obstacle.NotEvaluated(Construct.Lambda, "LAMBDA(x,x*2)"))],
                earlier
            ),
        };
    }
}
