using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.Grading.Tests.Summaries;

/// <summary>What a student's answers have in common; the lines are conventions.</summary>
public sealed class StudentPatternTests
{
    private static readonly Exercise Exercise = new(
        "doubles",
        "Doubles",
        "adding",
        ExerciseLevel.Standard,
        5,
        "arithmetic",
        "Double it.",
        [new("mass", "Mass", "g", 1, 9, 1)],
        [],
        [
            .. Enumerable
                .Range(0, 10)
                .Select(at => new Part($"part_{at}", "How much?", CellFormula.Of("=mass*2"), "g", Tolerance.Absolute(0.5), 1, true, [])),
        ],
        []
    );

    /// <summary>Outcomes as letters: s sound, v value-only, m misconception, i incorrect, b blank.</summary>
    private static StudentPattern Of(string outcomes) =>
        StudentPattern.Of(
            new(
                new("s", "S"),
                GradeStatus.Graded,
                "s.xlsx",
                [
                    .. outcomes.Select(
                        (letter, at) =>
                            new AnswerGrade(
                                Exercise,
                                Exercise.Parts[at],
                                OutcomeOf(letter),
                                0,
                                1,
                                CellValue.Blank,
                                1,
                                null,
                                [],
                                new Dictionary<string, double>()
                            )
                    ),
                ],
                []
            )
        );

    private static Outcome OutcomeOf(char letter) =>
        letter switch
        {
            's' => Outcome.Sound,
            'v' => Outcome.ValueOnly,
            'm' => Outcome.Misconception,
            'i' => Outcome.Incorrect,
            _ => Outcome.Blank,
        };

    [Theory]
    [InlineData("vvvvvvvv", true)]
    [InlineData("vvvsmmmm", true)]
    [InlineData("vvvssmmm", false)]
    [InlineData("vvssssss", false)]
    [InlineData("vvmmmmmm", false)]
    public void Numbers_without_formulas_are_a_pattern_where_they_are_most_of_what_is_right(string outcomes, bool typed)
    {
        Assert.Equal(typed, Of(outcomes).IsMostlyTyped);
    }

    [Theory]
    [InlineData("sssssbbb", "part_5")]
    [InlineData("ssbsbbbb", "part_4")]
    [InlineData("ssssssbb", null)]
    [InlineData("bbbbssss", null)]
    public void Blanks_that_reach_to_the_end_tell_where_a_student_stopped(string outcomes, string? part)
    {
        Assert.Equal(part, Of(outcomes).StoppedAt?.Part.Id);
    }

    [Theory]
    [InlineData("mismssss", 3)]
    [InlineData("missssss", 0)]
    [InlineData("bbbsssss", 0)]
    public void Three_wrong_turns_are_several(string outcomes, int turns)
    {
        Assert.Equal(turns, Of(outcomes).WrongTurns.Count);
    }

    /// <summary>In a long set nearly everybody has three: what counts is the share, from a third on.</summary>
    [Theory]
    [InlineData("mimssssss", 3)]
    [InlineData("mimsssssss", 0)]
    [InlineData("mimmssssss", 4)]
    public void Few_wrong_turns_among_many_answers_are_none(string outcomes, int turns)
    {
        Assert.Equal(turns, Of(outcomes).WrongTurns.Count);
        Assert.Equal(outcomes.Count(letter => letter is 'm' or 'i') / (double)outcomes.Length, Of(outcomes).WrongShare, 1e-9);
    }
}
