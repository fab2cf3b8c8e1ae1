using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Gradebooks;

/// <summary>
/// What an instructor types over points is found, whichever program saved it and wherever the cell went, and nothing else is.
/// </summary>
public sealed class GradebookReaderTests
{
    private static readonly DealtClass Dealt = SampleGrades.Grades.Dealt with
    {
        Students = [.. SampleGrades.Grades.Students.Select(student => SampleClass.Dealt.Students[0] with { Who = student.Who })],
    };
    private static readonly byte[] Written = GradebookWriter.Write(SampleGrades.Grades, SampleGrades.Summary);

    /// <summary>Over two question marks, over points that were graded, and for a student of whom nothing came back.</summary>
    private const string Typing = "p = w['Gradebook']\np['D9'] = 2\np['F9'] = 0.5\np['E7'] = 0\np['D10'] = 1\n";

    private static readonly string[] Found = ["ada-01 E7 3 → 0", "cho-03 D9 ? → 2", "cho-03 F9 ? → 0.5", "dee-04 D10 ? → 1"];

    [Fact]
    public void A_gradebook_that_was_only_saved_again_has_nothing_typed_into_it()
    {
        Assert.Empty(Read(Written));
        Assert.Empty(Read(OpenPyXl.Run(Written, "").Saved));
        Assert.Empty(Read(LibreOffice.SaveAgain(Written)));
    }

    [Fact]
    public void Points_typed_over_question_marks_over_points_and_for_work_on_paper_are_found()
    {
        var typed = OpenPyXl.Run(Written, Typing).Saved;

        Assert.Equal(Found, Read(typed));
        Assert.Equal(Found, Read(LibreOffice.SaveAgain(typed)));
    }

    [Fact]
    public void Students_are_known_by_their_ids_when_rows_are_sorted_and_by_tags_when_rows_and_columns_are_put_in()
    {
        const string sort = """
            rows = [[p.cell(r, c).value for c in range(1, 10)] for r in range(7, 13)]
            for r, row in enumerate(reversed(rows)):
                for c, v in enumerate(row): p.cell(7 + r, 1 + c).value = v
            p.insert_rows(1, 2)
            p.insert_cols(3)
            p.title = 'My points'
            """;
        var typed = OpenPyXl.Run(Written, Typing + sort).Saved;

        // Row 9 is row 10 of the six when they stand upside down, two rows further down and one column further right.
        Assert.Equal(
            ["ada-01 F14 3 → 0", "cho-03 E12 ? → 2", "cho-03 G12 ? → 0.5", "dee-04 E11 ? → 1"],
            Read(typed).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_formula_counts_with_what_it_comes_to()
    {
        var typed = LibreOffice.SaveAgain(OpenPyXl.Run(Written, "w['Gradebook']['D9'] = '=1/2+1'").Saved);

        Assert.Equal(["cho-03 D9 ? → 1.5"], Read(typed));
    }

    [Theory]
    [InlineData("'three'", "three")]
    [InlineData("-1", "-1")]
    [InlineData("99", "99")]
    [InlineData("None", "")]
    [InlineData("True", "TRUE")]
    public void What_can_be_no_points_is_told_and_not_taken(string python, string shown)
    {
        var one = Assert.Single(GradebookReader.Read(OpenPyXl.Run(Written, $"w['Gradebook']['D7'] = {python}").Saved, Dealt).Typed);

        Assert.Null(one.Points);
        Assert.Equal(shown, one.Typed);
        Assert.IsType<TypedPointsFault.OutOfRange>(one.Fault);
        Assert.Throws<InvalidOperationException>(() => one.ToCorrection(""));
    }

    /// <summary>An id beside somebody else's name says of nobody whose the points are.</summary>
    [Fact]
    public void Points_beside_anothers_name_are_told_and_not_taken()
    {
        var one = Assert.Single(
            GradebookReader.Read(OpenPyXl.Run(Written, "w['Gradebook']['D9'] = 1.5; w['Gradebook']['A9'] = 'Zoe Lund'").Saved, Dealt).Typed
        );

        Assert.Null(one.Points);
        Assert.Equal(new TypedPointsFault.OtherName("Zoe Lund"), one.Fault);
    }

    [Theory]
    [InlineData("'1,5'")]
    [InlineData("' 1.5 '")]
    public void Points_typed_as_text_are_read_with_either_decimal_sign(string python) =>
        Assert.Equal(["cho-03 D9 ? → 1.5"], Read(OpenPyXl.Run(Written, $"w['Gradebook']['D9'] = {python}").Saved));

    [Fact]
    public void Anything_else_says_why_it_cannot_be_read()
    {
        Assert.IsType<GradebookFault.Refused>(GradebookReader.Read([1, 2, 3], Dealt).Fault);
        Assert.Equal(
            new GradebookFault.NoAnswers("Answers"),
            GradebookReader.Read(OpenPyXl.Run(Written, "del w['Answers']").Saved, Dealt).Fault
        );
        Assert.IsType<GradebookFault.NoPoints>(
            GradebookReader
                .Read(
                    OpenPyXl
                        .Run(Written, "\nfor s in w.sheetnames:\n    if s != 'Gradebook': del w[s]\nw['Gradebook'].delete_cols(1, 3)")
                        .Saved,
                    Dealt
                )
                .Fault
        );
    }

    private static List<string> Read(byte[] file)
    {
        var reading = GradebookReader.Read(file, Dealt);
        Assert.Null(reading.Fault);
        return
        [
            .. reading.Typed.Select(one =>
                FormattableString.Invariant(
                    $"{one.Student.Id} {one.Cell.Split('!')[1]} {(one.Before is { } before ? $"{before:0.##}" : "?")} → {one.Points:0.##}"
                )
            ),
        ];
    }
}
