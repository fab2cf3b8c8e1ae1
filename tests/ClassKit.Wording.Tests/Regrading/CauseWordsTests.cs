using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;
using ClassKit.Wording.Regrading;
using ClassKit.Wording.Tests.Samples;

namespace ClassKit.Wording.Tests.Regrading;

public sealed class CauseWordsTests
{
    public static TheoryData<AnswerCause, string> OfAnswers =>
        new()
        {
            { new AnswerCause.OtherKey(12, 87), "the key gives 12\u00A0°F, and gave 87\u00A0°F" },
            { new AnswerCause.OtherOutcome(Outcome.Sound, Outcome.Misconception), "Right, was Known wrong turn" },
            { new AnswerCause.OtherShare(Outcome.ValueOnly, 0.5m, 0.4m), "Number only earns 50 %, and earned 40 %" },
            { new AnswerCause.OtherShare(Outcome.ValueOnly, 0.125m, null), "Number only earns 12.5 %, and earned nothing" },
            { new AnswerCause.NotCorrectedAnyMore("Shown at the bench."), "no longer corrected (Shown at the bench.)" },
        };

    public static TheoryData<StudentCause, string> OfStudents =>
        new()
        {
            { new StudentCause.OtherFile("ada-2.xlsx", null), "ada-2.xlsx is graded now, none was before" },
            { new StudentCause.OtherTotal(new(null, 1), []), "At most 1 point counts now" },
            { new StudentCause.OtherTotal(new(1, null), ["dough"]), "Only the best exercise counts now: not dough" },
            { new StudentCause.OtherLateness(null), "no longer late" },
            { new StudentCause.OtherLateness(new(2, 0.125m) { By = TimeSpan.FromHours(32) }), "1 day and 8 hours late, 12.5 % off" },
            { new StudentCause.OtherLateness(new(2, 0.125m)), "up to 2 days late, 12.5 % off" },
        };

    [Theory]
    [MemberData(nameof(OfAnswers))]
    public void A_reason_of_an_answer_is_said_with_its_numbers(AnswerCause cause, string words) =>
        Assert.Equal(words, CauseWords.Of(cause, Parts.Of("°F")));

    [Theory]
    [MemberData(nameof(OfStudents))]
    public void A_reason_of_a_student_is_said_with_its_files_and_numbers(StudentCause cause, string words) =>
        Assert.Equal(words, CauseWords.Of(cause));

    [Fact]
    public void Every_reason_there_is_has_words()
    {
        Assert.All(Every.Of<AnswerCause>(), cause => Assert.NotEmpty(CauseWords.Of(cause, Parts.Of())));
        Assert.All(Every.Of<StudentCause>(), cause => Assert.NotEmpty(CauseWords.Of(cause)));
    }
}
