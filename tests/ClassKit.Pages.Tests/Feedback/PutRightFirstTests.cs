using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Pages.Feedback;

namespace ClassKit.Pages.Tests.Feedback;

/// <summary>Of slips that cost the same, those come first of which a student can be told what happened.</summary>
public sealed class PutRightFirstTests
{
    private static readonly AnswerFinding NearMiss = new AnswerFinding.NearMiss([], "=mass*3", new Dictionary<string, string>(), true);

    private static readonly AnswerFinding Unnamed = new AnswerFinding.NotRight();

    [Fact]
    public void A_near_miss_comes_before_what_nobody_can_name_and_not_before_what_costs_more()
    {
        Assert.Equal(["1b", "1d"], Costliest((Unnamed, 2), (NearMiss, 2), (Unnamed, 2), (NearMiss, 2)));
        Assert.Equal(["1a", "1b"], Costliest((Unnamed, 2), (NearMiss, 2), (Unnamed, 2)));
        Assert.Equal(["1a", "1c"], Costliest((Unnamed, 3), (NearMiss, 1), (NearMiss, 2)));
    }

    private static IEnumerable<string> Costliest(params (AnswerFinding Finding, int Points)[] answers)
    {
        List<Part> parts =
        [
            .. answers.Select(
                (answer, at) =>
                    new Part($"p{at}", "How much?", CellFormula.Of("=mass*2"), "g", Tolerance.Absolute(0.5), answer.Points, true, [])
            ),
        ];
        var exercise = new Exercise(
            "e",
            "E",
            "weighing",
            ExerciseLevel.Standard,
            5,
            "arithmetic",
            "Double it.",
            [new("mass", "Mass", "g", 100, 900, 1)],
            [],
            parts,
            []
        );
        List<AnswerGrade> grades =
        [
            .. answers.Zip(parts, (answer, part) =>
                new AnswerGrade(
                    exercise,
                    part,
                    Outcome.Incorrect,
                    0,
                    answer.Points,
                    CellValue.FromNumber(3),
                    1,
                    null,
                    [answer.Finding],
                    new Dictionary<string, double>()
                )
            ),
        ];
        return new FeedbackPlaces([new ExerciseFeedback(1, exercise, grades, IsCounted: true)]).Costliest(2).Select(place => place.Label);
    }
}
