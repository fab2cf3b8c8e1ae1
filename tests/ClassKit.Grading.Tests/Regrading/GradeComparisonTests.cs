using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Corrections;
using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Regrading;

/// <summary>What changes between the record and a new grading, and the reason given for it.</summary>
public sealed class GradeComparisonTests
{
    private static readonly ReturnedBook Book = new ReturnedBook(Ada)
        .Answer("sum", 138)
        .Answer("temperature", "=2*want-sum")
        .Answer("ice", "=water*(tap-temperature)/(tap+112)");

    private static ClassGrades Graded(DealtClass dealt, ReturnedBook? book = null, string file = "ada.xlsx") =>
        ClassGrader.Grade(dealt, [(book ?? Book).As(file)]);

    private static IReadOnlyList<GradeChange> Changes(ClassGrades now) => GradeComparison.Between(Graded(Class), now);

    private static DealtClass WithMarking(MarkingScheme marking) => Class with { Marking = marking };

    [Fact]
    public void Nothing_changes_where_nothing_was_changed()
    {
        Assert.Empty(Changes(Graded(Class)));
    }

    [Fact]
    public void Another_share_for_typed_answers_is_the_reason_and_touches_them_alone()
    {
        var change = Assert.Single(Changes(Graded(WithMarking(Class.Marking with { AccuracyShare = 0.5m }))));

        Assert.Equal("ada-berg", change.Student.Id);
        Assert.Equal(0.2m, change.Now.Points - change.Before.Points);
        var answer = Assert.Single(change.Answers);
        Assert.Equal(("sum", 0.8m, 1.0m), (answer.Answer.Part.Id, answer.Before!.Value, answer.Answer.Points));
        Assert.Equal([new AnswerCause.OtherShare(Outcome.ValueOnly, 0.5m, 0.4m)], answer.Why);
    }

    [Fact]
    public void Another_rule_for_totals_is_the_reason_and_touches_no_answer()
    {
        var change = Assert.Single(Changes(Graded(WithMarking(Class.Marking with { Total = new(null, 1) }))));

        Assert.Empty(change.Answers);
        Assert.Equal((1, 1), change.Now);
        Assert.Equal(new(null, 1), Assert.IsType<StudentCause.OtherTotal>(Assert.Single(change.Why)).Rule);
    }

    [Fact]
    public void A_corrected_key_is_the_reason_and_what_it_does_to_the_outcome()
    {
        var exercise = Class.Exercises[0];
        var parts = exercise.Parts.Select(part =>
            part.Id == "temperature" ? part with { Key = CellFormula.Of("=2*want-sum"), Misconceptions = [] } : part
        );
        var (rekeyed, problems) = Rekeying.Apply(Class, [exercise with { Constraints = [], Parts = [.. parts] }]);
        Assert.Empty(problems);

        var answers = Assert.Single(Changes(Graded(rekeyed!))).Answers.ToDictionary(answer => answer.Answer.Part.Id);

        // 2 × 75 - 138 = 12 °F where the three-factor method gives 87 °F.
        Assert.Equal(
            [new AnswerCause.OtherKey(12, 87), new AnswerCause.OtherOutcome(Outcome.Sound, Outcome.Misconception)],
            answers["temperature"].Why
        );
        Assert.Contains(new AnswerCause.OtherOutcome(Outcome.Sound, Outcome.FollowThrough), answers["ice"].Why);
    }

    [Fact]
    public void A_correction_and_its_withdrawal_are_reasons()
    {
        var corrected = Corrector.Apply(Graded(Class), [new("ada-berg", "dough", "sum", 2, "Shown at the bench.")]);

        Assert.Equal([new AnswerCause.Corrected("Shown at the bench.")], Assert.Single(Assert.Single(Changes(corrected)).Answers).Why);
        Assert.Equal(
            [new AnswerCause.NotCorrectedAnyMore("Shown at the bench.")],
            Assert.Single(Assert.Single(GradeComparison.Between(corrected, Graded(Class))).Answers).Why
        );
    }

    [Fact]
    public void Another_file_is_a_reason_even_where_no_point_changes()
    {
        var change = Assert.Single(Changes(Graded(Class, file: "ada-2.xlsx")));

        Assert.Equal([new StudentCause.OtherFile("ada-2.xlsx", "ada.xlsx")], change.Why);
        Assert.Empty(change.Answers);
    }

    [Fact]
    public void A_student_whose_file_is_gone_is_told_of()
    {
        var now = ClassGrader.Grade(Class, []);

        var change = Assert.Single(Changes(now));
        Assert.Contains(new StudentCause.NothingGraded(), change.Why);
        Assert.Equal((0.0m, 0.0m), change.Now);
    }
}
