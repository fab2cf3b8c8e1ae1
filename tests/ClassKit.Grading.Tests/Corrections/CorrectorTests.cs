using ClassKit.Exercises.Marking;
using ClassKit.Grading.Corrections;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Corrections;

/// <summary>The instructor's word over the grader's.</summary>
public sealed class CorrectorTests
{
    private static readonly Correction HalfMarks = new("ada-berg", "dough", "sum", 1, "Shown at the bench.");

    private static ClassGrades Graded(ReturnedBook book) => ClassGrader.Grade(Class, [book.As("ada.xlsx")]);

    private static AnswerGrade Answer(ClassGrades grades, string student, string part) =>
        grades.Students.Single(grade => grade.Who.Id == student).Answers.Single(answer => answer.Part.Id == part);

    [Fact]
    public void Points_follow_the_correction_and_the_outcome_stays()
    {
        var graded = Graded(new ReturnedBook(Ada).Answer("sum", 5));

        var corrected = Corrector.Apply(graded, [HalfMarks]);

        var answer = Answer(corrected, "ada-berg", "sum");
        Assert.Equal((Outcome.Incorrect, 1.0m, 2.0m), (answer.Outcome, answer.Points, answer.OutOf));
        Assert.Equal(new AppliedCorrection(0, "Shown at the bench."), answer.Correction);
        Assert.Equal(1, corrected.Students[0].Points);
        Assert.Null(Answer(corrected, "ada-berg", "ice").Correction);
    }

    [Fact]
    public void Applying_it_to_another_grading_gives_the_same_points()
    {
        var first = Corrector.Apply(Graded(new ReturnedBook(Ada).Answer("sum", 5)), [HalfMarks]);
        var again = Corrector.Apply(Graded(new ReturnedBook(Ada).Answer("sum", "=flour+room+friction")), [HalfMarks]);

        Assert.Equal(Answer(first, "ada-berg", "sum").Points, Answer(again, "ada-berg", "sum").Points);
        Assert.Equal(2, Answer(again, "ada-berg", "sum").Correction!.AsGraded);
    }

    [Fact]
    public void An_answer_left_to_the_instructor_counts_once_it_is_decided()
    {
        var graded = Graded(new ReturnedBook(Ada).Answer("sum", "=RAND()*0+flour+room+friction"));
        Assert.True(Answer(graded, "ada-berg", "sum").IsUndecided);

        var answer = Answer(Corrector.Apply(graded, [HalfMarks with { Points = 2 }]), "ada-berg", "sum");

        Assert.False(answer.IsUndecided);
        Assert.Equal((2.0m, 2.0m), (answer.Points, answer.OutOf));
    }

    [Fact]
    public void Work_marked_by_hand_counts_for_a_student_of_whom_no_workbook_came()
    {
        var corrected = Corrector.Apply(Graded(new ReturnedBook(Ada)), [HalfMarks with { Student = "ben-okoye" }]);

        var ben = corrected.Students[1];
        Assert.Equal((GradeStatus.Missing, 1.0m, 2.0m), (ben.Status, ben.Points, ben.OutOf));
        Assert.All(ben.Answers.Where(answer => answer.Part.Id != "sum"), answer => Assert.True(answer.IsUndecided));
        Assert.Equal(Class.Exercises[0].Parts.Select(part => part.Id), ben.Answers.Select(answer => answer.Part.Id));

        // What the class has shown is read from workbooks only.
        Assert.Equal(1, ClassSummarizer.Summarize(corrected).Parts[0].Judged);
    }

    [Fact]
    public void A_correction_to_nothing_says_that_a_student_without_a_workbook_has_no_work()
    {
        var corrected = Corrector.Apply(Graded(new ReturnedBook(Ada)), [HalfMarks with { Student = "ben-okoye", Points = 0 }]);

        var ben = corrected.Students[1];
        Assert.Equal((0.0m, 8.0m), (ben.Points, ben.OutOf));
        Assert.DoesNotContain(ben.Answers, answer => answer.IsUndecided);
    }
}
