using ClassKit.Exercises.Layout;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>Answers are found after all that a student or a program may do to a workbook in good faith.</summary>
public sealed class FindingTests
{
    private const string Temperature = "=3*want-flour-room-friction";

    private static ReturnedBook Book => new ReturnedBook(Ada).Answer("temperature", Temperature);

    [Fact]
    public void On_a_renamed_sheet_whose_names_went_along()
    {
        var grade = Grade(Book.RenameSheet("my answers", withNames: true));

        AssertSound(grade);
        Assert.DoesNotContain(grade.Flags, flag => flag.Code == FlagCodes.OtherSheet);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void On_a_renamed_sheet_whose_names_were_lost(bool namesGone)
    {
        var book = Book.RenameSheet("my answers", withNames: false);
        var grade = Grade(namesGone ? book.WithoutNames() : book);

        AssertSound(grade);
        Assert.Contains(grade.Flags, flag => flag is Flag.OtherSheet { Sheet.Text: "my answers" });
        Assert.DoesNotContain(grade.Flags, flag => flag.Code == FlagCodes.GivenOverwritten);
    }

    [Fact]
    public void On_a_copy_of_the_sheet()
    {
        var grade = Grade(Book.WorkOnCopy("Cool water (2)"));

        AssertSound(grade);
        Assert.Contains(grade.Flags, flag => flag.Code == FlagCodes.OtherSheet);
    }

    [Fact]
    public void Where_it_was_cut_and_pasted_to()
    {
        AssertSound(Grade(Book.CutAndPaste("temperature", 40, 7)));
        AssertSound(Grade(Book.CutAndPaste("temperature", 40, 3)));
    }

    [Fact]
    public void After_a_script_moved_a_row_onto_which_another_name_points()
    {
        // "sum" stays blank, and the stale name of "temperature" points at nothing of its own.
        AssertSound(Grade(Book.MoveWithoutNames("temperature", 3)));
    }

    [Fact]
    public void After_a_script_inserted_a_column()
    {
        // The formula's own references are as the script left them, so a typed number is what can be found again.
        var grade = Grade(new ReturnedBook(Ada).Answer("temperature", 87).InsertColumnWithoutNames());

        Assert.Equal(Outcome.ValueOnly, grade.Answers[1].Outcome);
        Assert.DoesNotContain(grade.Flags, flag => flag.Code == FlagCodes.GivenOverwritten);
    }

    /// <summary>
    /// Before the tags, between them and the questions, and between the questions and the answers, where notes are written then; in a
    /// program that keeps names and in one that drops them.
    /// </summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(1, true)]
    [InlineData(2, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(3, true)]
    [InlineData(4, false)]
    [InlineData(4, true)]
    public void After_a_column_was_inserted(int before, bool namesGone)
    {
        foreach (var note in new object?[] { null, "see below", 7 })
        {
            var book = new ReturnedBook(Ada);
            foreach (var part in new[] { "sum", "temperature" })
                book.Beside(part, PracticeColumns.Usual.Label, "How warm is it?");
            book.InsertColumn(before).Answer("temperature", Temperature).Answer("sum", "=flour+room+friction");
            if (note is not null && before is 2 or 3)
                book.Beside("temperature", before, note!).Beside("sum", before, note!);

            var grade = Grade(namesGone ? book.WithoutNames() : book);

            AssertSound(grade);
            Assert.Equal(Outcome.Sound, grade.Answers[0].Outcome);
            Assert.DoesNotContain(grade.Flags, flag => flag.Code == FlagCodes.GivenOverwritten);
        }
    }

    [Fact]
    public void Of_two_answers_made_one_cell_the_lower_is_blank() =>
        Assert.Equal(
            [Outcome.Sound, Outcome.Blank],
            Grade(new ReturnedBook(Ada).Answer("sum", "=flour+room+friction").MergeWithBelow("sum"))
                .Answers.Take(2)
                .Select(answer => answer.Outcome)
        );

    [Fact]
    public void In_a_merged_cell() => AssertSound(Grade(new ReturnedBook(Ada).MergeToTheLeft("temperature", Temperature)));

    [Fact]
    public void As_a_formula_that_was_left_as_text()
    {
        var grade = Grade(new ReturnedBook(Ada).AnswerAsText("temperature", Temperature));

        AssertSound(grade);
        Assert.Equal([new AnswerFinding.Right(), new AnswerFinding.StoodAsText()], grade.Answers[1].Findings);
        Assert.StartsWith("=", grade.Answers[1].Formula, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_only_begins_like_a_formula_stays_unreadable() =>
        Assert.Equal(Outcome.Unreadable, Grade(new ReturnedBook(Ada).AnswerInWords("temperature", "= see above, 87")).Answers[1].Outcome);

    [Fact]
    public void The_student_is_known_by_an_id_that_was_moved()
    {
        var grade = ClassGrader.Grade(Class, [Book.WithoutNames().MoveId(new("Notes", 9, 2)).As("homework.xlsx")]).Students[0];

        AssertSound(grade);
        Assert.DoesNotContain(grade.Flags, flag => flag.Code == FlagCodes.OwnerInferred);
    }

    [Fact]
    public void The_student_is_known_by_the_numbers_on_a_renamed_sheet()
    {
        var grade = ClassGrader
            .Grade(Class, [Book.WithoutNames().WithoutId().RenameSheet("x", withNames: false).As("homework.xlsx")])
            .Students[0];

        AssertSound(grade);
        Assert.Contains(grade.Flags, flag => flag.Code == FlagCodes.OwnerInferred);
    }

    private static void AssertSound(StudentGrade grade)
    {
        Assert.Equal(GradeStatus.Graded, grade.Status);
        Assert.Equal(Outcome.Sound, grade.Answers.Single(answer => answer.Part.Id == "temperature").Outcome);
    }
}
