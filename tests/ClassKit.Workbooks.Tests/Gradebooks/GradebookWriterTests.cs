using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Gradebooks;

public sealed class GradebookWriterTests
{
    private const int Total = 10;
    private static readonly byte[] Written = GradebookWriter.Write(SampleGrades.Grades, SampleGrades.Summary);
    private static readonly WorkbookSnapshot Gradebook = ReturnedWorkbookReader.Read(Written).Workbook!;

    /// <summary>openpyxl drops every stored value, so that what comes back was computed by LibreOffice.</summary>
    private static readonly Lazy<WorkbookSnapshot> Recalculated = new(() => Recalculate(""));

    /// <summary>
    /// Chō has 4.5 of 8, and two of the three points of 1a and 1c were left to the instructor, who now decides. Of Ada's 11 points half is
    /// taken off for lateness.
    /// </summary>
    private static readonly Lazy<WorkbookSnapshot> Decided = new(() =>
        Recalculate("w['Gradebook']['D9'] = 2\nw['Gradebook']['F9'] = 0.5\nw['Outcomes']['D9'] = 'Right'\nw['Gradebook']['M7'] = 0.5")
    );

    [Fact]
    public void Totals_are_live_formulas_with_the_grader_s_own_sums_stored()
    {
        AssertTotals(Gradebook);
    }

    [Fact]
    public void LibreOffice_comes_to_the_same_totals()
    {
        AssertTotals(Recalculated.Value);
    }

    [Fact]
    public void The_first_sheet_shows_each_student_s_percent_and_total_beside_the_name() => AssertClass(Gradebook);

    [Fact]
    public void LibreOffice_comes_to_the_same_first_sheet() => AssertClass(Recalculated.Value);

    [Fact]
    public void The_first_sheet_follows_points_typed_on_the_sheet_of_points()
    {
        Assert.Equal(7, Points(Decided.Value, 7, 3, "Class"));
        Assert.Equal(7.0 / 11, Points(Decided.Value, 7, 2, "Class")!.Value, 12);
    }

    [Fact]
    public void The_class_is_in_view_and_prints_by_itself_and_outcomes_cannot_be_typed_over()
    {
        using var workbook = new ClosedXML.Excel.XLWorkbook(new MemoryStream(Written));

        Assert.Equal("Class", Assert.Single(workbook.Worksheets, sheet => sheet.TabActive).Name);
        Assert.Equal("Class", Assert.Single(workbook.Worksheets, sheet => sheet.TabSelected).Name);
        Assert.Equal(1, workbook.Worksheet(1).PageSetup.PagesWide);
        Assert.True(workbook.Worksheet("Outcomes").Protection.IsProtected);
    }

    /// <summary>
    /// ECMA-376 Part 1, 18.3.1.18: each rule is a formula over the first cell of its range. Three a column, of which one holds of any
    /// number.
    /// </summary>
    [Fact]
    public void The_first_sheet_is_tinted_by_how_much_of_each_exercise_was_earned()
    {
        using var workbook = new ClosedXML.Excel.XLWorkbook(new MemoryStream(Written));
        var sheet = workbook.Worksheet("Class");
        var exercises = SampleGrades.Grades.Dealt.LayOut().Exercises.Where(exercise => exercise.Answers.Count > 0).ToList();

        Assert.Equal(exercises.Count * 3, sheet.ConditionalFormats.Count());
        Assert.Equal(["all points", "some", "none"], Enumerable.Range(5, 3).Select(column => sheet.Cell(3, column).GetString()));
        foreach (var (index, exercise) in exercises.Index())
        {
            var all = exercise.Answers.Sum(answer => answer.Part.Points);
            Assert.EndsWith($"\nof {all}", sheet.Cell(4, 5 + index).GetString(), StringComparison.Ordinal);
            Assert.Equal(
                Enumerable.Range(0, 3).Select(at => sheet.Cell(3, 5 + at).Style.Fill.BackgroundColor.Color.ToArgb()).Order(),
                sheet
                    .ConditionalFormats.Where(format => format.Ranges.First().RangeAddress.FirstAddress.ColumnNumber == 5 + index)
                    .Select(format => format.Style.Fill.BackgroundColor.Color.ToArgb())
                    .Order()
            );
        }
        Assert.Equal("Class mean", Text("Class", 5 + SampleGrades.Grades.Students.Count, 1));
    }

    /// <summary>
    /// An exercise with an answer to decide is compared with what of it counts so far, and one that the marking scheme leaves out has no
    /// tint: worked out here from the grades themselves.
    /// </summary>
    [Theory]
    [InlineData(null)]
    [InlineData(1)]
    public void Tints_go_by_what_counts(int? best)
    {
        var rule = new TotalRule(best, null);
        var grades = SampleGrades.Grades with
        {
            Dealt = SampleGrades.Grades.Dealt with { Marking = SampleGrades.Grades.Dealt.Marking with { Total = rule } },
            Students = [.. SampleGrades.Grades.Students.Select(student => student with { Rule = rule })],
        };
        var written = GradebookWriter.Write(grades, SampleGrades.Summary);
        var exercises = grades.Dealt.LayOut().Exercises.Where(exercise => exercise.Answers.Count > 0).ToList();
        foreach (var workbook in new[] { ReturnedWorkbookReader.Read(written).Workbook!, Recalculate("", written) })
        {
            var counted = 0;
            foreach (var (index, student) in grades.Students.Index())
            {
                var worth = exercises
                    .Select(
                        (exercise, at) =>
                            (
                                Judged: student
                                    .Answers.Where(answer => answer.Exercise.Id == exercise.Exercise.Id && !answer.IsUndecided)
                                    .Sum(answer => answer.OutOf),
                                Stored: Points(workbook, 5 + index, 5 + exercises.Count + 3 + at, "Class")
                            )
                    )
                    .ToList();
                Assert.All(worth.Where(one => one.Stored is not null), one => Assert.Equal((double)one.Judged, one.Stored));
                var stored = worth.Count(one => one.Stored is not null);
                Assert.Equal(Math.Min(best ?? int.MaxValue, worth.Count(one => one.Judged > 0)), stored);
                counted += stored;
            }
            Assert.True(counted > 0);
        }
        using var sheets = new ClosedXML.Excel.XLWorkbook(new MemoryStream(written));
        Assert.Equal(exercises.Count * (best is null ? 3 : 4), sheets.Worksheet("Class").ConditionalFormats.Count());
        Assert.True(sheets.Worksheet("Class").Column(5 + exercises.Count + 3).IsHidden);
    }

    /// <summary>By the grades themselves: totals, and of each exercise the sum of its judged answers.</summary>
    private static void AssertClass(WorkbookSnapshot gradebook)
    {
        var exercises = SampleGrades.Grades.Dealt.LayOut().Exercises.Where(exercise => exercise.Answers.Count > 0).ToList();
        foreach (var (index, student) in SampleGrades.Grades.Students.Index())
        {
            var row = 5 + index;
            Assert.Equal(Points(Gradebook, 7 + index, Total), Points(gradebook, row, 3, "Class"));
            Assert.Equal(Points(Gradebook, 7 + index, Total + 2) ?? -1, Points(gradebook, row, 2, "Class") ?? -1, 12);
            Assert.Equal(student.Answers.Count(answer => answer.IsUndecided), Points(gradebook, row, 5 + exercises.Count + 1, "Class"));
            foreach (var (at, exercise) in exercises.Index())
            {
                var judged = student.Answers.Where(answer => answer.Exercise.Id == exercise.Exercise.Id && !answer.IsUndecided).ToList();
                Assert.Equal(
                    judged.Count == 0 ? null : (double)judged.Sum(answer => answer.Points),
                    Points(gradebook, row, 5 + at, "Class")
                );
            }
        }
    }

    [Fact]
    public void Points_typed_over_a_question_mark_enter_both_sides_of_the_total()
    {
        Assert.Equal(7, Points(Decided.Value, 9, Total));
        Assert.Equal(11, Points(Decided.Value, 9, Total + 1));
        Assert.Equal(7.0 / 11, Points(Decided.Value, 9, Total + 2)!.Value, 12);
    }

    [Fact]
    public void What_lateness_costs_is_taken_off_the_total_and_follows_what_is_typed_there()
    {
        var grades = SampleGrades.Grades with
        {
            Students = [SampleGrades.Grades.Students[0] with { Late = new(2, 0.2m) }, .. SampleGrades.Grades.Students.Skip(1)],
        };

        var late = ReturnedWorkbookReader.Read(GradebookWriter.Write(grades, SampleGrades.Summary)).Workbook!;

        Assert.Equal((0.2, 8.8), (Points(late, 7, Total + 3), Points(late, 7, Total)));
        Assert.Equal(5.5, Points(Decided.Value, 7, Total));
    }

    [Theory]
    [InlineData(1, null)]
    [InlineData(null, 6)]
    [InlineData(1, 4)]
    public void Totals_of_the_best_exercises_and_with_a_limit_are_live_too(int? best, int? most)
    {
        var rule = new TotalRule(best, most);
        var grades = SampleGrades.Grades with
        {
            Dealt = SampleGrades.Grades.Dealt with { Marking = SampleGrades.Grades.Dealt.Marking with { Total = rule } },
            Students = [.. SampleGrades.Grades.Students.Select(student => student with { Rule = rule })],
        };
        var written = GradebookWriter.Write(grades, SampleGrades.Summary);

        AssertTotals(ReturnedWorkbookReader.Read(written).Workbook!, grades);
        AssertTotals(Recalculate("", written), grades);
    }

    [Fact]
    public void A_student_without_answers_has_no_total_and_does_not_pull_the_mean_down()
    {
        Assert.Equal("missing", Text("Gradebook", 10, 3));
        Assert.Equal("unreadable", Text("Gradebook", 11, 3));
        Assert.Equal("", Gradebook.Find(new("Gradebook", 10, Total))!.Stored.Text);

        // Ada has 11 points, Ben 3.5, Chō 4.5; all of Fay's are left to the instructor
        Assert.Equal((11 + 3.5 + 4.5) / 3, Points(Gradebook, 13, Total)!.Value, 12);
    }

    [Fact]
    public void Counts_of_outcomes_and_shares_are_those_of_the_summary()
    {
        AssertParts(Gradebook);
    }

    [Fact]
    public void LibreOffice_comes_to_the_same_counts_and_shares()
    {
        AssertParts(Recalculated.Value);
    }

    [Fact]
    public void A_word_changed_on_the_sheet_of_outcomes_changes_the_counts()
    {
        // Right, for the instructor, judged.
        Assert.Equal((1, 2, 2), Counts(Gradebook));
        Assert.Equal((2, 1, 3), Counts(Decided.Value));

        static (double, double, double) Counts(WorkbookSnapshot gradebook) =>
            (
                gradebook.Find(new("Parts", 6, 4))!.Stored.Number,
                gradebook.Find(new("Parts", 6, 11))!.Stored.Number,
                gradebook.Find(new("Parts", 6, 12))!.Stored.Number
            );
    }

    [Fact]
    public void Parts_to_teach_again_are_marked_as_the_summary_has_them()
    {
        var marked = Enumerable
            .Range(0, SampleGrades.Summary.Parts.Count)
            .Where(index => Gradebook.Find(new("Parts", 6 + index, 15))!.Stored.ToString() == "teach again")
            .Select(index => SampleGrades.Summary.Parts[index].Part.Id);

        Assert.Equal(SampleGrades.Summary.TeachAgain.Select(part => part.Part.Id).Order(), marked.Order());
    }

    [Fact]
    public void Names_files_and_formulas_of_students_are_texts_and_never_formulas()
    {
        string[] ours = ["COUNT(", "SUM(", "AVERAGE(", "COUNTIF(", "INDEX("];
        var formulas = Gradebook.Sheets.SelectMany(sheet => sheet.Cells.Values).Select(cell => cell.Formula).OfType<string>().ToList();
        Assert.All(formulas, formula =>
            Assert.True(
                formula.StartsWith("IF(", StringComparison.Ordinal) || ours.Any(name => formula.StartsWith(name, StringComparison.Ordinal)),
                formula
            )
        );

        Assert.Equal("=HYPERLINK(\"http://example.org\",\"Ben\")", Text("Gradebook", 8, 1));
        Assert.Equal("-Eli", Text("Gradebook", 11, 1));
        Assert.Equal("+cmd.xlsx", Text("Gradebook", 8, Total + 4));
        Assert.Equal("=C7*C8", Text("Answers", 5, 8));
        Assert.Equal("=notes.docx", Text("Files", 5, 1));
        using var workbook = new ClosedXML.Excel.XLWorkbook(new MemoryStream(Written));
        Assert.True(workbook.Worksheet("Gradebook").Cell("A8").Style.IncludeQuotePrefix);
    }

    [Fact]
    public void Every_answer_flag_and_file_is_listed()
    {
        Assert.Equal(SampleGrades.Grades.Students.Sum(student => student.Answers.Count), Rows("Answers"));
        Assert.StartsWith("@eli.xlsx: The file is cut off", Text("Flags", 5, 5), StringComparison.Ordinal);
        Assert.Equal(
            SampleGrades.Grades.Unmatched.Count + SampleGrades.Grades.Students.Count(student => student.File is not null),
            Rows("Files")
        );
    }

    /// <summary>
    /// The column is there to be filtered: one wrong method is one text, whosever cells it was found in, and who was not wrong has none.
    /// </summary>
    [Fact]
    public void The_nearest_wrong_turn_is_one_text_for_all_who_took_it()
    {
        var students = SampleGrades.Grades.Students.Select(student =>
            student.Who.Id switch
            {
                "ben-02" => student with { Answers = [Missed(student.Answers[0], "C8"), .. student.Answers.Skip(1)] },
                "cho-03" => student with { Answers = [Missed(student.Answers[0], "D17"), .. student.Answers.Skip(1)] },
                _ => student,
            }
        );
        var grades = SampleGrades.Grades with { Students = [.. students] };
        var written = ReturnedWorkbookReader.Read(GradebookWriter.Write(grades, ClassSummarizer.Summarize(grades))).Workbook!;
        var column = Enumerable.Range(1, 11).Single(at => written.Find(new("Answers", 4, at))?.Stored.Text == "Nearest wrong turn");
        // Ada's six answers stand before Ben's six, and these before Chō's.
        string? Turn(int answer) => written.Find(new("Answers", 5 + answer, column))?.Stored.Text;

        Assert.Contains("hydration", Turn(6), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("C8", Turn(6), StringComparison.Ordinal);
        Assert.Equal(Turn(6), Turn(12));
        Assert.Equal("Multiply", Turn(8)); // as the words that set it right begin
        Assert.All(Enumerable.Range(0, 6), answer => Assert.True(string.IsNullOrEmpty(Turn(answer)), Turn(answer)));

        static AnswerGrade Missed(AnswerGrade answer, string cell) =>
            answer with
            {
                Outcome = Outcome.Incorrect,
                Findings =
                [
                    new AnswerFinding.NearMiss(
                        [new KeyEdit.LeftOut("flour*hydration", "flour", "hydration", BinaryOperator.Multiply)],
                        "=flour",
                        new Dictionary<string, string> { ["hydration"] = cell },
                        true
                    ),
                ],
            };
    }

    [Fact]
    public void Of_thousands_of_files_the_first_are_listed_and_the_rest_counted()
    {
        var files = Enumerable
            .Range(1, 1200)
            .Select(at => new AccountedFile(
                $"photo {at:0000}.jpg",
                "01",
                null,
                FileFate.Refused,
                null,
                new Uncounted.NotRead(new Refusal.OtherKind(FileKind.Jpeg))
            ));
        var grades = SampleGrades.Grades with { Files = [.. files] };

        var sheet = ReturnedWorkbookReader.Read(GradebookWriter.Write(grades, SampleGrades.Summary)).Workbook!.FindSheet("Files")!;

        // A thousand rows below the head in row 4; students' own files come after the refused ones.
        var left = 1200 + grades.Students.Count(student => student.File is not null) - 1000;
        Assert.Equal("photo 1000.jpg", sheet.Cells[new(1004, 1)].Stored.Text);
        Assert.Equal($"and {left} more", sheet.Cells[new(1005, 1)].Stored.Text);
        Assert.False(sheet.Cells.ContainsKey(new(1006, 1)));
    }

    [Fact]
    public void Heads_repeat_on_every_printed_page()
    {
        using var archive = new System.IO.Compression.ZipArchive(new MemoryStream(Written));
        using var reader = new StreamReader(archive.GetEntry("xl/workbook.xml")!.Open());
        var workbook = reader.ReadToEnd();

        Assert.Contains(">Gradebook!$A:$A,Gradebook!$4:$6<", workbook, StringComparison.Ordinal);
        Assert.Contains(">Outcomes!$A:$A,Outcomes!$4:$6<", workbook, StringComparison.Ordinal);
    }

    [Fact]
    public void Writing_twice_gives_the_same_bytes_in_any_culture()
    {
        var written = Written;
        using var _ = new CommaDecimals();

        Assert.Equal(written, GradebookWriter.Write(SampleGrades.Grades, SampleGrades.Summary));
    }

    [Fact]
    public void A_class_that_returned_nothing_has_a_gradebook_too()
    {
        var nothing = SampleGrades.Grades with
        {
            Students =
            [
                .. SampleGrades.Grades.Students.Select(student =>
                    student with
                    {
                        Status = GradeStatus.Missing,
                        File = null,
                        Answers = [],
                        Flags = [],
                    }
                ),
            ],
            Files = [],
        };
        var gradebook = ReturnedWorkbookReader.Read(GradebookWriter.Write(nothing, ClassSummarizer.Summarize(nothing))).Workbook!;

        Assert.All(gradebook.Sheets.SelectMany(sheet => sheet.Cells.Values), cell => Assert.False(cell.Stored.IsError));
        Assert.Equal("Nothing was flagged.", gradebook.Find(new("Flags", 5, 1))!.Stored.Text);
        Assert.Equal("No file was returned.", gradebook.Find(new("Files", 5, 1))!.Stored.Text);
    }

    private static WorkbookSnapshot Recalculate(string lines, byte[]? written = null) =>
        ReturnedWorkbookReader.Read(LibreOffice.SaveAgain(OpenPyXl.Run(written ?? Written, lines).Saved)).Workbook!;

    private static void AssertTotals(WorkbookSnapshot gradebook, ClassGrades? of = null)
    {
        var students = (of ?? SampleGrades.Grades).Students;
        for (var index = 0; index < students.Count; index++)
        {
            var student = students[index];
            var isTotalled = student.OutOf > 0;
            var row = 7 + index;
            Assert.Contains("SUM", gradebook.Find(new("Gradebook", row, Total))!.Formula, StringComparison.Ordinal);
            Assert.Equal(isTotalled ? (double)student.Points : null, Points(gradebook, row, Total));
            Assert.Equal(isTotalled ? (double)student.OutOf : null, Points(gradebook, row, Total + 1));
            if (isTotalled)
                Assert.Equal((double)(student.Points / student.OutOf), Points(gradebook, row, Total + 2)!.Value, 12);
            else
                Assert.Null(Points(gradebook, row, Total + 2));
        }
    }

    private static void AssertParts(WorkbookSnapshot gradebook)
    {
        for (var index = 0; index < SampleGrades.Summary.Parts.Count; index++)
        {
            var part = SampleGrades.Summary.Parts[index];
            var row = 6 + index;
            var counts = OutcomeText.ShownCounts(part);
            foreach (var (at, outcome) in OutcomeText.Order.Index())
                Assert.Equal((outcome, counts[outcome]), (outcome, (int)gradebook.Find(new("Parts", row, 4 + at))!.Stored.Number));
            Assert.Equal(part.Judged, gradebook.Find(new("Parts", row, 12))!.Stored.Number);
            Assert.Equal((double)part.RightShare!.Value, gradebook.Find(new("Parts", row, 13))!.Stored.Number, 12);
            Assert.Equal((double)part.UnderstoodShare!.Value, gradebook.Find(new("Parts", row, 14))!.Stored.Number, 12);
        }
    }

    private static double? Points(WorkbookSnapshot gradebook, int row, int column, string sheet = "Gradebook")
    {
        var value = gradebook.Find(new(sheet, row, column))!.Stored;
        return value.IsNumber ? value.Number : null;
    }

    private static string Text(string sheet, int row, int column) => Gradebook.Find(new(sheet, row, column))!.Stored.Text;

    private static int Rows(string sheet) =>
        Gradebook.FindSheet(sheet)!.Cells.Keys.Where(at => at.Row > 4).Select(at => at.Row).Distinct().Count();
}
