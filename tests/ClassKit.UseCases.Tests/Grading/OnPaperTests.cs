using System.Text;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.OnPaper;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>Ada returned a file, Ben worked on paper: what grading makes of both, up to the files.</summary>
public sealed class OnPaperTests
{
    private static readonly PaperReading Paper = PaperReader.Read(Typed(), "paper-answers.xlsx", new string('a', 64), SmallClass.Dealt);

    private static GradeResult Graded { get; } =
        GradeClass.Run(
            new(SmallClass.Dealt, ReturnedFiles.Of(new Upload("ada-berg.xlsx", () => new MemoryStream(SmallClass.Filled(SmallClass.Ada)))))
            {
                Paper = Paper,
            },
            Run.Unwatched
        );

    private static StudentGrade Ben => Graded.Grades.Students[1];

    /// <summary>Ben's row with every number right and every working ticked.</summary>
    private static byte[] Typed()
    {
        var empty = PaperWriter.Write(SmallClass.Dealt);
        var sheet = ReturnedWorkbookReader.Read(empty).Workbook!.Sheets.Single();
        var row = sheet.Cells.Single(cell => cell.Value.Stored.ToString() == SmallClass.Ben.Who.Id).Key.Row;
        var heads = sheet
            .Cells.Where(cell => cell.Key.Row == 6)
            .ToDictionary(cell => cell.Value.Stored.ToString(), cell => cell.Key.Column);
        var answers = SmallClass.Layout.AnswersOf(SmallClass.Ben).ToList();
        return WorkbookFiller.Fill(
            empty,
            [
                .. answers.Select(answer => new EnterNumber(new(sheet.Name, row, heads[answer.Tag]), answer.Expected)),
                .. answers
                    .Where(answer => heads.ContainsKey(answer.Tag + " ✓"))
                    .Select(answer => new EnterText(new(sheet.Name, row, heads[answer.Tag + " ✓"]), "✓")),
            ]
        );
    }

    [Fact]
    public void Right_numbers_with_their_working_earn_all_that_formulas_do()
    {
        var ada = Graded.Grades.Students[0];

        Assert.Empty(Paper.Faults);
        Assert.Equal((ada.Points, ada.OutOf), (Ben.Points, Ben.OutOf));
        Assert.True(Ben.IsFromPaper);
        Assert.False(ada.IsFromPaper);
        Assert.Contains(new Note.OnPaper(1), GradeNotes.Of(Graded));
    }

    [Fact]
    public void A_record_read_again_is_the_same_and_regrading_changes_nobody()
    {
        var read = GradesJson.Read("grades.json", GradesJson.Write(Graded.Grades), SmallClass.Dealt).Model!;

        Assert.Equal(GradesJson.Write(Graded.Grades), GradesJson.Write(read));
        Assert.Equal(Ben.Answers.Select(answer => answer.Paper), read.Students[1].Answers.Select(answer => answer.Paper));
        Assert.Equal(FileFate.Paper, read.Files.Single(file => file.Student?.Id == Ben.Who.Id).Fate);
        var again = RegradeClass.Run(
            new(
                new(
                    SmallClass.Dealt,
                    ReturnedFiles.Of(new Upload("ada-berg.xlsx", () => new MemoryStream(SmallClass.Filled(SmallClass.Ada))))
                )
                {
                    Paper = Paper,
                },
                read
            ),
            Run.Unwatched
        );
        Assert.Empty(again.Changes);
    }

    [Fact]
    public void On_record_it_stays_known_which_answers_were_on_paper_and_what_was_seen_of_their_working()
    {
        using var record = TeachingRecord.InMemory();
        var dealt = DealtJson.Read("dealt.json", DealtJson.Write(SmallClass.Dealt)).Model!;
        var read = GradesJson.Read("grades.json", GradesJson.Write(Graded.Grades), dealt).Model!;
        Assert.Empty(
            EnterGrades.Run(new(record, new(new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero), "Kim", ""), null, read), Run.Unwatched).Problems
        );

        var kept = record.Read(session => RecordedGrades.Of(session, dealt.Identity!.Digest))!;

        Assert.Equal(GradesJson.Write(read), GradesJson.Write(kept));
        Assert.Equal([false, true], kept.Students.Take(2).Select(student => student.IsFromPaper));
        Assert.Equal(Ben.Answers.Select(answer => answer.Paper), kept.Students[1].Answers.Select(answer => answer.Paper));
    }

    [Fact]
    public void Feedback_gradebook_and_report_say_that_it_was_on_paper_and_speak_of_no_cell()
    {
        var feedback = Text("feedback/ben-okoye.html");

        Assert.Contains("From paper: your instructor typed what you wrote.", feedback, StringComparison.Ordinal);
        Assert.Contains("Right, and your working shows the method.", feedback, StringComparison.Ordinal);
        Assert.DoesNotContain("your formula", feedback, StringComparison.OrdinalIgnoreCase);
        var table = Text("grades.csv").Split("\r\n");
        Assert.EndsWith(",on paper", table[0], StringComparison.Ordinal);
        Assert.EndsWith(",", table[1], StringComparison.Ordinal);
        Assert.EndsWith(",yes", table[2], StringComparison.Ordinal);
        Assert.Contains("Ben Okoye</a> (on paper)", Text("class-report.html"), StringComparison.Ordinal);
        var book = ReturnedWorkbookReader.Read(File("gradebook.xlsx")).Workbook!;
        Assert.Contains(book.Sheets.SelectMany(sheet => sheet.Cells), cell => cell.Value.Stored.ToString() == "on paper");
    }

    private static byte[] File(string path) => GradeFiles.Of(Graded).Single(one => one.Path == path).Content;

    private static string Text(string path) => Encoding.UTF8.GetString(File(path));
}
