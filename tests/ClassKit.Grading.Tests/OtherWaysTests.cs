using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>
/// A formula that goes another way than the key, by way of an earlier answer that the key does not name, is as sound as the key where that
/// answer is right: then it is where it is wrong, too. An instructor found 27 such answers that earned nothing, some of them accused of a
/// listed wrong turn.
/// </summary>
public sealed class OtherWaysTests
{
    private const string Right = "=3*want-flour-room-friction";
    private const string BySum = "=water*(tap-(3*want-sum))/(tap+112)";

    private static ReturnedBook Filled(object? sum, string ice = BySum)
    {
        var book = new ReturnedBook(Ada).Answer("temperature", Right).Answer("ice", ice).Answer("ice_share", "=ice/water*share");
        return sum is null ? book : book.Answer("sum", sum);
    }

    [Theory]
    [InlineData(148)]
    [InlineData("=flour+room")]
    [InlineData("=2*flour+room+friction")]
    public void What_goes_by_an_answer_that_the_key_does_not_name_carries_its_slip_on(object sum)
    {
        var grades = Grade(Filled(sum)).Answers.ToDictionary(grade => grade.Part.Id);

        Assert.Equal(Outcome.Incorrect, grades["sum"].Outcome);
        Assert.Equal(Outcome.Sound, grades["temperature"].Outcome);
        Assert.Equal((Outcome.FollowThrough, 2), (grades["ice"].Outcome, grades["ice"].Points));
        Assert.Equal(["sum"], Assert.IsType<AnswerFinding.FollowsThrough>(grades["ice"].Findings[0]).From.Select(part => part.Id));
        // And what stands on it carries the same one slip on.
        Assert.Equal((Outcome.FollowThrough, 2), (grades["ice_share"].Outcome, grades["ice_share"].Points));
        Assert.Equal(["sum"], Assert.IsType<AnswerFinding.FollowsThrough>(grades["ice_share"].Findings[0]).From.Select(part => part.Id));
    }

    [Fact]
    public void Where_that_answer_is_right_it_is_sound() =>
        Assert.Equal(Outcome.Sound, Grade(Filled("=flour+room+friction"), "ice").Outcome);

    [Fact]
    public void Where_that_answer_is_blank_it_waits_for_it()
    {
        var ice = Grade(Filled(null), "ice");

        Assert.Equal(["sum"], Assert.IsType<AnswerFinding.Waits>(ice.Findings[0]).For.Select(part => part.Id));
    }

    /// <summary>Not for having pointed there.</summary>
    [Theory]
    [InlineData("=water*(tap-(2*want-sum))/(tap+112)")]
    [InlineData("=water*(tap-sum)/(tap+112)")]
    [InlineData("=water*(tap-(3*want-sum))/144")]
    public void What_would_be_wrong_on_a_right_answer_stays_wrong(string ice) =>
        Assert.NotEqual(Outcome.FollowThrough, Grade(Filled(148, ice), "ice").Outcome);

    [Fact]
    public void A_class_that_version_6_judged_is_judged_as_it_was() =>
        Assert.Equal(
            Outcome.Incorrect,
            new ClassGrader(Class, new JudgeRecord(6, []))
                .Judge(Filled(148).As("ada.xlsx"))
                .Grade!.Answers.Single(grade => grade.Part.Id == "ice")
                .Outcome
        );
}
