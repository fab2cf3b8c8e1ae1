using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Summaries;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Wording.Files;
using ClassKit.Wording.Flags;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>Three students whose names are the same or easily taken for the same, and one with a name of her own.</summary>
public sealed partial class NamesakesTests
{
    private static readonly Roster Roster = new(
        "",
        [new("ana-1", "Ana Díaz"), new("ana-2", "ana diaz"), new("ana-3", "Ana Diaz"), new("ben", "Ben Okoye")]
    );

    private static readonly string[] ToldApart = ["Ana Díaz (ana-1)", "ana diaz (ana-2)", "Ana Diaz (ana-3)"];

    private static readonly DealtClass Dealt = Dealer
        .Deal(SmallClass.Dealt.Lesson, SmallClass.Dealt.LessonTitle, SmallClass.Dealt.Exercises, SmallClass.Dealt.Marking, Roster, 3)
        .Class!;

    private static string Printed(WorkbookSnapshot workbook) =>
        string.Join('\n', workbook.Sheets.SelectMany(sheet => sheet.Cells.Values).Select(content => content.Stored.ToString()));

    private static WorkbookSnapshot Read(byte[] file) => ReturnedWorkbookReader.Read(file).Workbook!;

    private static void AssertToldApart(string page, string where, params IEnumerable<string> expected)
    {
        // In the style sheet, whose running head says the title too, signs are escaped.
        var text = Style().Replace(page, "");
        foreach (var shown in expected)
            Assert.True(text.Contains(shown, StringComparison.Ordinal), $"{where} does not say {shown}");
        var bare = ToldApart.Aggregate(text, (left, shown) => left.Replace(shown, "", StringComparison.Ordinal));
        foreach (var name in Roster.Students.Take(3).Select(student => student.Name))
            Assert.False(bare.Contains(name, StringComparison.Ordinal), $"{where} says {name} without telling which");
        Assert.DoesNotContain("Okoye (ben", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_students_get_says_which_of_them_it_is_for()
    {
        foreach (var (student, shown) in Dealt.Students.Zip(ToldApart))
        {
            AssertToldApart(Printed(Read(DealtWorkbookWriter.Write(Dealt, student))), "the workbook", shown);
            AssertToldApart(Printed(Read(new DealtWorkbookWriter(Dealt).Write(student))), "the workbook from the template", shown);
            AssertToldApart(HtmlPages.Sheet(Dealt, student), "the sheet", shown);
            AssertToldApart(HtmlPages.SelfCheck(Dealt, student), "the practice page", shown);
        }
    }

    [Fact]
    public void Everything_made_of_a_graded_class_says_which_of_them_it_means()
    {
        List<ReturnedFile> files =
        [
            .. Dealt
                .Students.Take(2)
                .Select(student => new ReturnedFile($"{student.Who.Id}.xlsx", Read(SmallClass.Filled(Dealt, student)), null)),
            new("second.xlsx", Read(SmallClass.Filled(Dealt, Dealt.Students[0])), null),
            new("ben.xlsx", Read(SmallClass.Filled(Dealt, Dealt.Students[1])), null),
        ];
        var grades = ClassGrader.Grade(Dealt, files);
        var summary = ClassSummarizer.Summarize(grades);

        AssertToldApart(HtmlPages.ClassReport(grades, summary), "the class report", ToldApart);
        AssertToldApart(Printed(Read(GradebookWriter.Write(grades, summary))), "the gradebook", ToldApart);
        AssertToldApart(HtmlPages.Feedback(grades.Students[0], grades.Dealt), "the feedback", ToldApart[0]);
        AssertToldApart(
            string.Join('\n', grades.Students.SelectMany(student => student.Flags).Select(flag => FlagWords.Of(flag, []))),
            "a flag",
            ToldApart[0]
        );
        AssertToldApart(string.Join('\n', grades.Files.Select(UncountedWords.Of)), "a file's reason");
    }

    [Fact]
    public void A_deal_read_back_tells_them_apart_too_and_so_does_a_part_of_the_class()
    {
        var students = Namesakes.ToldApart([.. Dealt.Students.Take(1).Select(seat => seat.Who)]);

        Assert.Equal(
            ToldApart,
            DealtJson.Read("dealt.json", DealtJson.Write(Dealt)).Model!.Students.Take(3).Select(seat => seat.Who.Shown)
        );
        Assert.Equal(ToldApart[0], students[0].Shown);
        Assert.Equal(students, Namesakes.ToldApart(students));
    }

    [Fact]
    public void Who_is_dealt_to_without_a_namesake_of_the_class_still_bears_the_id_when_the_deal_is_read_back()
    {
        var alone = Dealt with { Students = [Dealt.Students[1]] };

        var read = DealtJson.Read("dealt.json", DealtJson.Write(alone)).Model!;

        Assert.Equal([ToldApart[1]], read.Students.Select(seat => seat.Who.Shown));
        Assert.Equal(DealtJson.Write(alone), DealtJson.Write(read));
    }

    [Fact]
    public void Grades_read_without_their_deal_tell_apart_who_shares_a_name_with_somebody_of_another()
    {
        var whole = Namesakes.ToldApart(Roster.Students);
        var one = Dealer
            .Deal(
                SmallClass.Dealt.Lesson,
                SmallClass.Dealt.LessonTitle,
                SmallClass.Dealt.Exercises,
                SmallClass.Dealt.Marking,
                new("", [whole[1], whole[3]]),
                3
            )
            .Class!;

        var grades = GradesJson.Read("grades.json", GradesJson.Write(ClassGrader.Grade(one, [])), null).Model!;

        Assert.Equal([ToldApart[1], "Ben Okoye"], grades.Students.Select(student => student.Who.Shown));
    }

    [GeneratedRegex("<style>.*?</style>", RegexOptions.Singleline)]
    private static partial Regex Style();
}
