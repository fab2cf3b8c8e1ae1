using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>What an answer must show for a finding, and that no more is found than it shows.</summary>
public sealed class EvidenceTests
{
    private static ReturnedBook Book => new(Ada);

    /// <summary>
    /// 225 - 100 is 125 °F, warmer than the tap: 10 × (95 - 125)/207 is -1.45 lb of ice. And 225 - 13800 is so cold that 660 lb of ice
    /// would go into 10 lb of water.
    /// </summary>
    [Theory]
    [InlineData(100.5)]
    [InlineData(13_800.0)]
    public void A_quantity_that_cannot_be_keeps_its_credit_and_says_that_something_earlier_is_wrong(double sum)
    {
        var grade = Grade(
            Book.Answer("sum", sum).Answer("temperature", "=3*want-sum").Answer("ice", "=water*(tap-temperature)/(tap+112)"),
            "ice"
        );

        Assert.Equal((Outcome.FollowThrough, 2), (grade.Outcome, grade.Points));
        Assert.IsType<AnswerFinding.Impossible>(grade.Findings[^1]);
    }

    [Fact]
    public void Text_of_a_formula_is_said_and_later_parts_do_not_pay_for_it()
    {
        var book = Book.Answer("sum", "=(flour+room+friction)&\" °F\"")
            .Answer("temperature", "=3*want-sum")
            .Answer("ice", "=water*(tap-temperature)/(tap+112)");

        Assert.Equal((Outcome.ValueOnly, 0.8m), (Grade(book, "sum").Outcome, Grade(book, "sum").Points));
        Assert.Equal([new AnswerFinding.RightInText(), new AnswerFinding.MakesText(new("138 °F"))], Grade(book, "sum").Findings);
        Assert.Equal((Outcome.FollowThrough, 2), (Grade(book, "temperature").Outcome, Grade(book, "temperature").Points));
        Assert.Equal((Outcome.FollowThrough, 2), (Grade(book, "ice").Outcome, Grade(book, "ice").Points));
    }

    [Fact]
    public void A_rounded_formula_on_words_is_a_slip_of_its_own_and_ends_nothing()
    {
        var book = Book.Answer("sum", "see my notes")
            .Answer("temperature", "=ROUND(3*want-sum,-1)")
            .Answer("ice", "=water*(tap-temperature)/(tap+112)");

        Assert.Equal(10, Assert.IsType<AnswerFinding.RoundsAnswer>(Grade(book, "temperature").Findings[0]).Step);
        Assert.Equal((Outcome.FollowThrough, 2), (Grade(book, "ice").Outcome, Grade(book, "ice").Points));
    }

    [Theory]
    [InlineData("=want*0+87")]
    [InlineData("=87*room/room")]
    public void A_formula_that_gives_the_same_whatever_is_given_is_no_method_after_typed_answers_either(string formula)
    {
        var grade = Grade(Book.Answer("sum", 138).Answer("temperature", formula), "temperature");

        Assert.Equal(Outcome.ValueOnly, grade.Outcome);
        var found = Assert.IsType<AnswerFinding.NotFollowing>(Assert.Single(grade.Findings));
        Assert.Empty(found.Typed);
        Assert.False(found.Varies);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(100)]
    public void A_number_typed_all_over_follows_from_nothing(int number)
    {
        var book = Book.Answer("sum", number).Answer("temperature", number).Answer("ice", number).Answer("ice_share", number);

        Assert.All(ClassGrader.Grade(Class, [book.As("ada.xlsx")]).Students[0].Answers, grade =>
            Assert.Equal((Outcome.Incorrect, 0), (grade.Outcome, grade.Points))
        );
    }

    /// <summary>
    /// 3 × 75 is 225. From a sum of 150 °F follow 75, which is what was wanted, from 160 follow 65, which is the flour, and from 125 follow
    /// 100; from a sum of 65, which is the flour, 160, and from 8, the friction, 217. Whoever carries that on is not asked what else it is.
    /// </summary>
    [Theory]
    [InlineData(150, 75)]
    [InlineData(160, 65)]
    [InlineData(125, 100)]
    [InlineData(65, 160)]
    [InlineData(8, 217)]
    public void What_follows_to_the_last_digit_follows_through_whatever_else_is_that_number(int sum, int temperature)
    {
        var grade = Grade(Book.Answer("sum", sum).Answer("temperature", temperature), "temperature");

        Assert.Equal((Outcome.FollowThrough, 0.8m), (grade.Outcome, grade.Points));
        Assert.IsType<AnswerFinding.FollowsThrough>(Assert.Single(grade.Findings));
    }

    /// <summary>
    /// A given that does not follow is copied; 225 follows from a sum of 0 as from none; 74.95 is near what follows from 150, and near is
    /// no more than a copy of a given is.
    /// </summary>
    [Theory]
    [InlineData(148, 75)]
    [InlineData(148, 65)]
    [InlineData(148, 100)]
    [InlineData(0, 225)]
    [InlineData(149.95, 75)]
    public void A_number_of_the_sheet_that_does_not_follow_earns_nothing_and_is_called_no_rounding(double sum, double temperature)
    {
        var grade = Grade(Book.Answer("sum", sum).Answer("temperature", temperature), "temperature");

        Assert.Equal((Outcome.Incorrect, 0), (grade.Outcome, grade.Points));
        Assert.DoesNotContain(grade.Findings, found => found is AnswerFinding.TypedRounded or AnswerFinding.TypedFromRounded);
    }

    /// <summary>0.3865 lb of ice is 0.4 lb and 0.3 lb so rounded; half a percent of it is allowed.</summary>
    [Theory]
    [InlineData("=ROUND(water*(tap-temperature)/(tap+112),1)")]
    [InlineData("=ROUNDDOWN(water*(tap-temperature)/(tap+112),1)")]
    public void Rounding_is_the_same_slip_wherever_it_hits(string formula)
    {
        var marking = Class.Marking with { RoundingSlipShare = 0.6m };
        var grade = Grade(
            Book.Answer("sum", "=flour+room+friction").Answer("temperature", "=3*want-sum").Answer("ice", formula),
            "ice",
            marking
        );

        Assert.Equal((Outcome.Incorrect, 1.2m), (grade.Outcome, grade.Points));
        Assert.Equal(0.1m, Assert.IsType<AnswerFinding.RoundsAnswer>(Assert.Single(grade.Findings)).Step);
    }

    private static AnswerGrade Grade(ReturnedBook book, string part, MarkingScheme? marking = null) =>
        ClassGrader
            .Grade(Class with { Marking = marking ?? Class.Marking }, [book.As("ada.xlsx")])
            .Students[0]
            .Answers.Single(answer => answer.Part.Id == part);
}
