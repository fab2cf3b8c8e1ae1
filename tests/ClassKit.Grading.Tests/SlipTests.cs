using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>Wrong numbers that are right but for one small thing, and right ones with something typed into the formula.</summary>
public sealed class SlipTests
{
    private static readonly MarkingScheme Generous = DoughTemperatureExercise.Marking with
    {
        UnitSlipShare = 0.5m,
        RoundingSlipShare = 0.75m,
    };

    private static ReturnedBook Book => new(Ada);

    public static TheoryData<string, string, AnswerFinding> OfUnits =>
        new()
        {
            { "ice", "=16*water*(tap-temperature)/(tap+112)", new AnswerFinding.OtherUnit("oz") },
            { "ice", "=water*(tap-temperature)/(tap+112)*0.45359237", new AnswerFinding.OtherUnit("kg") },
            { "temperature", "=(3*want-sum-32)/1.8", new AnswerFinding.OtherUnit("°C") },
            { "ice", "=1000*water*(tap-temperature)/(tap+112)", new AnswerFinding.OffByTens(1000, IsTooLarge: true) },
            { "ice", "=water*(tap-temperature)/(tap+112)/10", new AnswerFinding.OffByTens(10, IsTooLarge: false) },
        };

    [Theory]
    [MemberData(nameof(OfUnits))]
    public void The_right_quantity_in_another_unit_is_told_apart_and_earns_what_the_scheme_says(
        string part,
        string formula,
        AnswerFinding finding
    )
    {
        var strict = Grade(Solved().Answer(part, formula), part);
        var generous = Grade(Solved().Answer(part, formula), part, Generous);

        Assert.Equal((Outcome.Incorrect, 0), (strict.Outcome, strict.Points));
        Assert.Equal((Outcome.Incorrect, 1), (generous.Outcome, generous.Points));
        // What a formula is over the names is told with it; the words of it are held where words are made.
        Assert.Equal(
            finding,
            strict.Findings[0] is AnswerFinding.OffByTens tens ? tens with { Formula = null, Cells = null } : Assert.Single(strict.Findings)
        );
    }

    [Fact]
    public void A_typed_number_in_another_unit_earns_no_share_for_the_method()
    {
        // 87 °F is 30.56 °C.
        var grade = Grade(Solved().Answer("temperature", 30.56), "temperature", Generous);

        Assert.Equal([new AnswerFinding.OtherUnit("°C")], grade.Findings);
        Assert.Equal(2 * 0.5m * 0.4m, grade.Points);
    }

    public static TheoryData<string, string, AnswerFinding> OfRounding =>
        new()
        {
            { "ice", "=ROUND(water*(tap-temperature)/(tap+112),1)", new AnswerFinding.RoundsAnswer(0.1m, RoundingDirection.Nearest) },
            { "ice_share", "=ROUND(ice,1)/water*share", new AnswerFinding.RoundsWithin("ROUND(ice,1)", "ice", NoCells) },
        };

    [Theory]
    [MemberData(nameof(OfRounding))]
    public void Rounding_too_much_or_too_early_is_told_apart_and_earns_what_the_scheme_says(
        string part,
        string formula,
        AnswerFinding finding
    )
    {
        var strict = Grade(Solved().Answer(part, formula), part);
        var generous = Grade(Solved().Answer(part, formula), part, Generous);

        Assert.Equal((Outcome.Incorrect, 0), (strict.Outcome, strict.Points));
        Assert.Equal((Outcome.Incorrect, 1.5m), (generous.Outcome, generous.Points));
        Assert.Equal(
            [finding],
            strict.Findings.Select(one => one is AnswerFinding.RoundsWithin within ? within with { Cells = NoCells } : one)
        );
    }

    private static readonly IReadOnlyDictionary<string, string> NoCells = new Dictionary<string, string>();

    /// <summary>
    /// Four students of one class typed one formula and had 0.6, 0.4 and 0 of its points, as their numbers would have it. What is rounded
    /// within one formula earns what a rounded cell does.
    /// </summary>
    [Theory]
    [InlineData("ice", "=ROUND(water*(tap-temperature),-2)/(tap+112)", "ROUND(water*(tap-temperature),-2)")]
    [InlineData("ice", "=water*(tap-ROUNDUP(temperature,-1))/(tap+112)", "ROUNDUP(temperature,-1)")]
    [InlineData("ice_share", "=ROUND(ROUND(ice,0),0)/water*share", "ROUND(ROUND(ice,0),0)")]
    public void One_formula_has_one_outcome_and_one_mark_whatever_numbers_were_dealt(string part, string formula, string rounds)
    {
        foreach (var student in Class.Students)
        {
            var grade = GradeOf(student, Solved(new ReturnedBook(student)).Answer(part, formula), part);

            Assert.Equal((Outcome.Incorrect, 1.5m), (grade.Outcome, grade.Points));
            Assert.Equal(rounds, Assert.IsType<AnswerFinding.RoundsWithin>(Assert.Single(grade.Findings)).Written);
        }
    }

    [Fact]
    public void A_slip_on_an_own_earlier_slip_is_still_told_apart()
    {
        // 148 for 138 gives 77 °F, which is 25 °C.
        var grade = Grade(Book.Answer("sum", 148).Answer("temperature", "=(3*want-sum-32)/1.8"), "temperature");

        Assert.Equal([new AnswerFinding.OtherUnit("°C")], grade.Findings);
    }

    [Fact]
    public void A_number_that_only_looks_like_a_slip_on_the_dealt_inputs_is_none_in_a_formula()
    {
        // 870 is ten times 87, but the formula is about the room and follows nothing of the kind.
        var grade = Grade(Solved().Answer("temperature", "=870+(room-65)"), "temperature");

        Assert.Equal(Outcome.Incorrect, grade.Outcome);
        Assert.IsType<AnswerFinding.NotRight>(Assert.Single(grade.Findings));
    }

    [Theory]
    [InlineData("temperature", "=3*75-flour-room-friction", "want")]
    [InlineData("temperature", "=3*want-65-65-friction", "flour")]
    [InlineData("ice", "=water*(tap-(3*75-flour-room-friction))/(tap+112)", "want")]
    [InlineData("ice_share", "=ice/water*65%", "share")]
    [InlineData("temperature", "=IF(room=65,87,0)", null)]
    public void A_given_typed_into_a_formula_is_named_with_its_cell(string part, string formula, string? first)
    {
        var grade = Grade(Solved().Answer(part, formula), part);

        Assert.Equal(Outcome.ValueOnly, grade.Outcome);
        var found = Assert.IsType<AnswerFinding.NotFollowing>(Assert.Single(grade.Findings));
        Assert.True(found.Varies);
        Assert.Equal(first, found.Typed is [var typed, ..] ? typed.Given.Id : null);
        Assert.All(found.Typed, one =>
            Assert.Equal(Layout.GivensOf(Ada).Single(given => given.Name == one.Given.Id).Address.Cell, one.Cell)
        );
    }

    /// <summary>Every part right, so that a test spoils just one.</summary>
    private static ReturnedBook Solved() => Solved(Book);

    private static ReturnedBook Solved(ReturnedBook book) =>
        book.Answer("sum", "=flour+room+friction")
            .Answer("temperature", "=3*want-sum")
            .Answer("ice", "=water*(tap-temperature)/(tap+112)")
            .Answer("ice_share", "=ice/water*share");

    private static AnswerGrade GradeOf(DealtStudent student, ReturnedBook book, string part) =>
        ClassGrader
            .Grade(Class with { Marking = Generous }, [book.As($"{student.Who.Id}.xlsx")])
            .Students.Single(graded => graded.Who.Id == student.Who.Id)
            .Answers.Single(answer => answer.Part.Id == part);

    private static AnswerGrade Grade(ReturnedBook book, string part, MarkingScheme? marking = null) =>
        ClassGrader
            .Grade(Class with { Marking = marking ?? Class.Marking }, [book.As("ada.xlsx")])
            .Students[0]
            .Answers.Single(answer => answer.Part.Id == part);
}
