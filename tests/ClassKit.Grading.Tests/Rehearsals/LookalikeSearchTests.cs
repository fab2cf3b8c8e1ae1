using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Rehearsals;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests.Rehearsals;

/// <summary>
/// Everyone has x = 4, so that twice is 8 and six times 24. Nine times 4 is 36, which is also three times a first answer of 12.
/// </summary>
public sealed class LookalikeSearchTests
{
    private static readonly Exercise Twice = new(
        "twice",
        "Twice",
        "any",
        ExerciseLevel.Standard,
        5,
        "made up",
        "{x}",
        [new("x", "X", "", 4, 4, 0)],
        [],
        [
            new(
                "first",
                "?",
                CellFormula.Of("=x*2"),
                "",
                Tolerance.Absolute(0.1),
                1,
                false,
                [new("thrice", CellFormula.Of("=x*3"), "Twice.")]
            ),
            new(
                "second",
                "?",
                CellFormula.Of("=first*3"),
                "",
                Tolerance.Absolute(0.1),
                1,
                false,
                [
                    new("nine_times", CellFormula.Of("=x*9"), "Three times the first."),
                    new("added", CellFormula.Of("=first+24"), "Multiply."),
                ]
            ),
        ],
        []
    );

    private static IReadOnlyList<Lookalike> Search(params IReadOnlyList<double> firstAnswers)
    {
        var variant = new Variant(
            Twice,
            new Dictionary<string, decimal> { ["x"] = 4 },
            new Dictionary<string, double> { ["first"] = 8, ["second"] = 24 }
        );
        List<DealtStudent> seats = [.. firstAnswers.Select((_, number) => new DealtStudent(new($"s-{number}", "S"), "", [variant]))];
        List<StudentGrade> students =
        [
            .. firstAnswers.Zip(seats, (first, seat) =>
                new StudentGrade(seat.Who, GradeStatus.Graded, null, [Answer(0, first), Answer(1, 1)], [])
            ),
        ];
        return LookalikeSearch.In(new(new("l", "L", "C", 1, new("m", "M", 1, 1, 0, 0.6m), [Twice], seats), students, []));
    }

    private static AnswerGrade Answer(int part, double value) =>
        new(Twice, Twice.Parts[part], Outcome.Incorrect, 0, 1, CellValue.FromNumber(value), 0, null, [], new Dictionary<string, double>());

    [Fact]
    public void On_right_earlier_answers_all_can_be_told_apart() => Assert.Empty(Search(8, 8));

    [Fact]
    public void A_misconception_that_equals_the_method_carried_on_is_found_with_the_students_who_have_it()
    {
        // From 12: carried on 36, nine times 36, added 36.
        var found = Search(8, 12, 12);

        Assert.Equal(
            [("nine_times", null), ("added", null), ("added", "nine_times")],
            found.Select(pair => (pair.Misconception.Id, pair.Other?.Id))
        );
        Assert.All(found, pair => Assert.Equal(("second", 2, 3, 36.0), (pair.Part.Id, pair.Students, pair.Of, pair.Value)));
    }

    [Fact]
    public void An_earlier_answer_of_nothing_says_nothing_about_methods() => Assert.DoesNotContain(Search(0), pair => pair.Value == 0);
}
