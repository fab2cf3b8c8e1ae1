using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.PracticeBank.Tests.Fillings;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>Whoever is right is never told of a wrong method, however the right answer is written: over everything that ships.</summary>
public sealed class RightAnswersTests(ITestOutputHelper output)
{
    private static readonly int Ways = Trials.Of(60, 5);

    [Fact]
    public void Right_formulas_written_otherwise_are_right_and_nothing_else_is_said_of_them() =>
        Hold(
            "formulas",
            (draws, desk, part) => "=" + desk.Cells(OtherWriting.Of(part.Key, draws)),
            grade => grade is { Outcome: Outcome.Sound, Findings: [AnswerFinding.Right] } && grade.Points == grade.Part.Points
        );

    /// <summary>Half of the tolerance at most is rounded away, to as few digits as that leaves: 12, 12.3, 12.34.</summary>
    [Fact]
    public void Right_numbers_typed_as_short_as_they_may_be_are_right() =>
        Hold(
            "numbers",
            (draws, desk, part) => Short(part, desk.Right[part.Id], draws.Below(4)),
            grade => grade is { Outcome: Outcome.ValueOnly, Findings: [AnswerFinding.RightTyped] }
        );

    /// <summary>Two slips in one exercise, then a right formula: nothing is said of the last but what it follows from.</summary>
    [Fact]
    public void Right_formulas_behind_two_wrong_answers_are_never_named() =>
        Hold(
            "behind slips",
            (draws, desk, part) =>
                desk.Exercise.Parts.Where(one => one.IsNumber).ToList().IndexOf(part) < 2
                    ? $"=({desk.Cells(part)})*{1.1 + (draws.Below(8) / 10.0)}+{desk.FirstGiven}/{3 + draws.Below(5)}"
                    : "=" + desk.Cells(OtherWriting.Of(part.Key, draws)),
            grade => grade is { Outcome: Outcome.Sound or Outcome.FollowThrough } && grade.Points == grade.Part.Points,
            from: 2
        );

    private void Hold(string purpose, Func<SeededDraws, Desk, Part, object> fill, Func<AnswerGrade, bool> isRight, int from = 0)
    {
        var draws = SeededDraws.For(20, "right " + purpose);
        List<AnswerGrade> grades =
        [
            .. Shipped
                .Seats.SelectMany(seat =>
                    Enumerable.Range(0, Ways).SelectMany(_ => seat.Grade((desk, part) => part.IsNumber ? fill(draws, desk, part) : null))
                )
                .Where(grade =>
                    grade.Part.IsNumber && grade.Exercise.Parts.Where(part => part.IsNumber).ToList().IndexOf(grade.Part) >= from
                ),
        ];
        var wronged = grades.Where(grade => !isRight(grade)).ToList();
        output.WriteLine($"{grades.Count} right answers, {wronged.Count} called otherwise");
        Assert.True(grades.Count > 500, $"Only {grades.Count} answers.");
        Assert.True(
            wronged.Count == 0,
            string.Join(
                '\n',
                wronged
                    .Take(12)
                    .Select(grade =>
                        $"{grade.Exercise.Id}.{grade.Part.Id} {grade.Part.Key}: {grade.Formula ?? grade.Value.ToString()} = {grade.Value} for {grade.Expected} is {grade.Outcome}: {string.Join(", ", grade.Findings)}"
                    )
            )
        );
    }

    private static double Short(Part part, double right, int more)
    {
        for (var decimals = -2; decimals < 12; decimals++)
        {
            var scale = Math.Pow(10, decimals);
            var rounded = Math.Round(right * scale, MidpointRounding.AwayFromZero) / scale;
            if (part.Tolerance.Accepts(right, right + (2 * (rounded - right))) && more-- <= 0)
                return rounded;
        }
        return right;
    }
}
