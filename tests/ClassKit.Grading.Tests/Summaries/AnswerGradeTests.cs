using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests.Summaries;

/// <summary>What an answer shows of its student, the same wherever it is counted. The lines are conventions.</summary>
public sealed class AnswerGradeTests
{
    private static AnswerGrade Of(
        Outcome outcome,
        bool formulaAsked = true,
        bool inWords = false,
        decimal points = 0,
        bool isDecided = false
    )
    {
        var part = new Part("one", "How much?", CellFormula.Of("=mass*2"), "g", Tolerance.Absolute(0.5), 2, formulaAsked, [])
        {
            InWords = inWords ? new("Something true") : null,
        };
        var exercise = new Exercise(
            "doubles",
            "Doubles",
            "adding",
            ExerciseLevel.Standard,
            5,
            "arithmetic",
            "Double it.",
            [new("mass", "Mass", "g", 1, 9, 1)],
            [],
            [part],
            []
        );
        return new(
            exercise,
            part,
            outcome,
            points,
            outcome == Outcome.Unsupported && !isDecided ? 0 : 2,
            CellValue.Blank,
            1,
            null,
            [],
            new Dictionary<string, double>()
        )
        {
            Correction = isDecided ? new(0, "read") : null,
        };
    }

    [Theory]
    [InlineData(Outcome.Sound, true, true)]
    [InlineData(Outcome.FollowThrough, true, true)]
    [InlineData(Outcome.ValueOnly, true, false)]
    [InlineData(Outcome.ValueOnly, false, true)]
    [InlineData(Outcome.Misconception, true, false)]
    [InlineData(Outcome.Incorrect, true, false)]
    [InlineData(Outcome.Blank, true, false)]
    public void What_the_grader_judged_shows_a_method_or_does_not(Outcome outcome, bool formulaAsked, bool shows)
    {
        var answer = Of(outcome, formulaAsked);

        Assert.True(answer.IsJudged);
        Assert.Equal(shows, answer.ShowsMethod);
    }

    /// <summary>
    /// Words that nobody has read count neither for a student nor against one, and a blank among them no more than a page of them.
    /// </summary>
    [Theory]
    [InlineData(Outcome.Unsupported, true)]
    [InlineData(Outcome.Blank, true)]
    [InlineData(Outcome.Unsupported, false)]
    public void What_waits_for_the_instructor_shows_nothing_yet(Outcome outcome, bool inWords)
    {
        var answer = Of(outcome, inWords: inWords);

        Assert.False(answer.IsJudged);
        Assert.False(answer.ShowsMethod);
    }

    [Theory]
    [InlineData(2, true)]
    [InlineData(1, false)]
    public void What_the_instructor_has_read_shows_what_they_gave_for_it(int points, bool shows)
    {
        var answer = Of(Outcome.Unsupported, inWords: true, points: points, isDecided: true);

        Assert.True(answer.IsJudged);
        Assert.Equal(shows, answer.ShowsMethod);
    }
}
