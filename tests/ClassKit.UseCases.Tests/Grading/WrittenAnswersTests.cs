using System.Net;
using System.Text;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>Answers in own words from the dealt workbook to the points that the instructor types.</summary>
public sealed class WrittenAnswersTests
{
    private const string Words = "=Yeast & <b>cold</b>,\nsaid Ada Berg of quvex";

    private const string LookFor = "One point for the yeast, one for the cold.";

    /// <summary>The first exercise asks for words at its end.</summary>
    private static DealtClass Dealt { get; } =
        SmallClass.Deal(change: exercise =>
            exercise.Id != SmallClass.Lesson.Exercises[0].Id
                ? exercise
                : exercise with
                {
                    Parts =
                    [
                        .. exercise.Parts,
                        new("why", "Why?", WordsAsked.NoKey, "", Tolerance.Absolute(0), 2, false, []) { InWords = new(LookFor) },
                    ],
                }
        );

    private static DealtStudent Ada => Dealt.Students[0];

    private static GradeResult Graded { get; } = GradeClass.Run(Request, Run.Unwatched);

    private static GradeRequest Request => new(Dealt, ReturnedFiles.Of(new Upload("ada-berg.xlsx", () => new MemoryStream(Filled()))));

    private static byte[] Filled()
    {
        var layout = Dealt.LayOut();
        var place = layout.Exercises[0].Answers[^1].Address;
        return WorkbookFiller.Fill(DealtWorkbookWriter.Write(Dealt, Ada), [new EnterText(place, Words)]);
    }

    private static string Text(GradeResult graded, string file) =>
        Encoding.UTF8.GetString(GradeFiles.Of(graded).Single(one => one.Path == file).Content);

    [Fact]
    public void The_instructor_reads_them_beside_what_to_look_for_and_every_character_is_text()
    {
        var page = Text(Graded, GradeFiles.WrittenAnswers);

        Assert.Contains(LookFor, page, StringComparison.Ordinal);
        Assert.Contains("=Yeast &amp; &lt;b&gt;cold&lt;/b&gt;,", page, StringComparison.Ordinal);
        Assert.Contains(Words, WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        Assert.DoesNotContain("<b>cold", page, StringComparison.Ordinal);
        Assert.Equal(new Note.WrittenAnswers(1, GradeFiles.WrittenAnswers), GradeNotes.Of(Graded).OfType<Note.WrittenAnswers>().Single());
        Assert.Contains("Your instructor reads this", Text(Graded, "feedback/ada-berg.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Until_points_are_typed_they_count_neither_for_nor_against()
    {
        var student = Graded.Grades.Students[0];

        Assert.Equal(Dealt.ExercisesOf(Ada).Sum(exercise => exercise.Parts.Sum(part => part.Points)) - 2, student.OutOf);
        var csv = Text(Graded, "grades.csv").Split("\r\n");
        var column = Array.IndexOf(csv[0].Split(','), $"{Dealt.Exercises[0].Id}.why");
        Assert.Equal("", csv[1].Split(',')[column]);
    }

    [Fact]
    public void Points_typed_over_the_question_mark_count_once_they_are_taken_over()
    {
        var gradebook = GradebookWriter.Write(Graded.Grades, Graded.Summary);
        var sheet = ReturnedWorkbookReader.Read(gradebook).Workbook!.Sheets.Single(one => one.Name == "Gradebook");
        var mark = sheet.Cells.Single(cell => cell.Value.Stored.ToString() == "?").Key;
        var typed = WorkbookFiller.Fill(gradebook, [new EnterNumber(new("Gradebook", mark.Row, mark.Column), 1.5)]);

        var points = GradebookReader.Read(typed, Dealt).Typed;
        var again = GradeClass.Run(Request with { Typed = new(points, []), TakeOver = true }, Run.Unwatched).Grades;

        var before = Graded.Grades.Students[0];
        Assert.Equal((before.Points + 1.5m, before.OutOf + 2), (again.Students[0].Points, again.Students[0].OutOf));
        Assert.DoesNotContain(again.Students[0].Answers, answer => answer.IsUndecided);
    }

    [Fact]
    public void A_record_read_again_has_the_words() =>
        Assert.Equal(
            Words,
            WrittenAnswer.In(GradesJson.Read("grades.json", GradesJson.Write(Graded.Grades), Dealt).Model!).Single().Answer.Value.Text
        );

    [Fact]
    public void Under_pseudonyms_no_word_of_them_is_left()
    {
        var (reports, _) = Graded.UnderPseudonyms(new(new byte[32]));
        var files = GradeFiles.Of(reports);

        Assert.DoesNotContain(files, file => file.Path == GradeFiles.WrittenAnswers);
        Assert.All(files, file =>
            Assert.DoesNotContain(
                "quvex",
                file.Path.EndsWith(".xlsx", StringComparison.Ordinal)
                    ? string.Join(
                        '\n',
                        ReturnedWorkbookReader
                            .Read(file.Content)
                            .Workbook!.Sheets.SelectMany(sheet => sheet.Cells.Values)
                            .Select(cell => cell.Stored.ToString())
                    )
                    : Encoding.UTF8.GetString(file.Content),
                StringComparison.Ordinal
            )
        );
        Assert.Contains("quvex", Text(Graded, "feedback/ada-berg.html"), StringComparison.Ordinal);
    }
}
