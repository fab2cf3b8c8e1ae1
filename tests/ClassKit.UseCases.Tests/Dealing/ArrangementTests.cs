using System.Text;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Lateness;
using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Practising;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>
/// What was arranged with a student is followed by everything that the student is given, and by grading; nobody else's changes.
/// </summary>
public sealed class ArrangementTests
{
    private static readonly PracticeSet Set = PracticeSet.Of(SmallClass.Lesson) with
    {
        Exercises = [.. SmallClass.Lesson.Exercises.Take(2)],
    };

    private static readonly Arrangement Adas = new(LargePrint: true, 0.25m, DueWish.Parse("2026-11-27T12:00"));

    private static DealMade Deal(Arrangement? adas, DealtClass? before = null)
    {
        var roster = new Roster("Invented class", [new("ada-berg", "Ada Berg"), new("ben-okoye", "Ben Okoye")])
        {
            TimeZone = ClassTimeZone.Find("Europe/Paris"),
            Arrangements = adas is null ? new Dictionary<string, Arrangement>() : new() { ["ada-berg"] = adas },
        };
        return DealPractice
            .Run(
                new(Set, roster, new(SetWish.None, IsSpread: false, 11) { Due = DueWish.Parse("2026-11-20T17:00") })
                {
                    Earlier = before is null ? EarlierDeal.None : new(null, before),
                },
                Run.Unwatched
            )
            .Model!;
    }

    private static byte[] File(DealMade deal, string path) => DealFiles.Of(deal).Single(file => file.Path == path).Content;

    private static string Text(DealMade deal, string path) => Encoding.UTF8.GetString(File(deal, path));

    [Fact]
    public void Nobody_elses_files_change()
    {
        var (plain, arranged) = (Deal(null), Deal(Adas));
        Assert.Equal(File(plain, "workbooks/ben-okoye.xlsx"), File(arranged, "workbooks/ben-okoye.xlsx"));
        Assert.Equal(Text(plain, "sheets/ben-okoye.html"), Text(arranged, "sheets/ben-okoye.html"));
        Assert.NotEqual(Text(plain, "sheets/ada-berg.html"), Text(arranged, "sheets/ada-berg.html"));
    }

    [Fact]
    public void Workbook_and_sheet_say_the_students_own_time_and_moment()
    {
        var deal = Deal(Adas);
        var minutes = Set.Exercises.Select(exercise => (int)Math.Ceiling(exercise.Minutes * 1.25)).ToList();
        var said = ReturnedWorkbookReader
            .Read(File(deal, "workbooks/ada-berg.xlsx"))
            .Workbook!.Sheets.SelectMany(sheet => sheet.Cells.Values)
            .Select(cell => cell.Stored.IsText ? cell.Stored.Text : $"{cell.Stored}")
            .ToList();

        Assert.Contains("Friday 27 November 2026, 12:00", said);
        Assert.All(minutes, one => Assert.Contains(said, text => text.Contains($"about {one} minutes", StringComparison.Ordinal)));
        var sheet = Text(deal, "sheets/ada-berg.html");
        Assert.Contains($"about {minutes.Sum()} minutes", sheet.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains("Due Friday 27 November 2026, 12:00.", sheet, StringComparison.Ordinal);
        Assert.Contains("large-print\"", sheet, StringComparison.Ordinal);
        Assert.Contains("Due Friday 20 November 2026, 17:00.", Text(deal, "sheets/ben-okoye.html"), StringComparison.Ordinal);
    }

    /// <summary>By the lesson's folder or by its title; what is arranged for another work changes nothing here.</summary>
    [Fact]
    public void What_is_arranged_for_one_work_alone_holds_in_that_work()
    {
        var due = DueWish.Parse("2026-11-27T12:00");
        var here = Deal(
            Arrangement.None with
            {
                OnlyFor = [new(Set.Id, true, null, null), new(Set.Title, null, 0.25m, null), new(Set.Id, null, null, due)],
            }
        );
        var elsewhere = Deal(Arrangement.None with { OnlyFor = [new("elsewhere", true, 0.5m, due)] });

        Assert.Equal(Deal(Adas).Dealt.Students.Select(Arranged), here.Dealt.Students.Select(Arranged));
        Assert.Equal(Text(Deal(Adas), "sheets/ada-berg.html"), Text(here, "sheets/ada-berg.html"));
        Assert.Equal(Deal(null).Dealt.Students.Select(Arranged), elsewhere.Dealt.Students.Select(Arranged));
    }

    [Fact]
    public void Large_print_is_printed_from_its_own_file_and_the_class_file_says_so()
    {
        var printed = Text(Deal(Adas), DealFiles.SheetsToPrint);
        Assert.DoesNotContain("name-ada-berg", printed, StringComparison.Ordinal);
        Assert.Contains("name-ben-okoye", printed, StringComparison.Ordinal);
        Assert.Contains(
            "In large print, and so not here but each in a file of their own in the folder “sheets”: Ada Berg.",
            printed,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void It_is_kept_in_the_deal_and_said_and_other_deals_say_nothing_of_it()
    {
        var deal = Deal(Adas);
        var read = DealtJson.Read("dealt.json", DealtJson.Write(deal.Dealt)).Model!;
        Assert.Equal(deal.Dealt.Students.Select(Arranged), read.Students.Select(Arranged));
        Assert.Equal(["ada-berg"], Assert.Single(DealNotes.Of(deal).OfType<Note.Arranged>()).Students.Select(student => student.Who.Id));
        Assert.DoesNotContain("arrangement", DealtJson.Write(Deal(null).Dealt), StringComparison.Ordinal);
        Assert.Empty(DealNotes.Of(Deal(null)).OfType<Note.Arranged>());
    }

    [Fact]
    public void What_is_arranged_after_dealing_changes_no_number_and_not_whose_deal_it_is()
    {
        var (before, after) = (Deal(null).Dealt, Deal(Adas, Deal(null).Dealt).Dealt);
        Assert.Equal(before.Identity, after.Identity);
        Assert.Equal(
            before.Students.Select(student => student.GivensOf(Set.Exercises[0].Id)),
            after.Students.Select(student => student.GivensOf(Set.Exercises[0].Id))
        );
        Assert.True(after.Students[0].LargePrint);
    }

    [Fact]
    public void Lateness_goes_by_the_students_own_moment_and_is_read_back_from_the_record()
    {
        var dealt = Deal(Adas).Dealt;
        var saved = new DateTime(2026, 11, 28, 0, 0, 0, DateTimeKind.Utc);
        var returned = ReturnedFiles.Of([
            .. dealt.Students.Select(student => new Upload($"{student.Who.Id}.xlsx", () =>
                new MemoryStream(SmallClass.Filled(dealt, student))
            )),
        ]);
        var grades = GradeClass.Run(new(dealt, returned), Run.Unwatched).Grades;
        var between = LateWork.Mark(Saved(grades, new(2026, 11, 24, 0, 0, 0, DateTimeKind.Utc)), dealt.Due!);
        var after = LateWork.Mark(Saved(grades, saved), dealt.Due!);

        Assert.Equal([false, true], between.Students.Select(student => student.Late is not null));
        Assert.Equal(
            [dealt.Students[0].Due, dealt.Due],
            after.Students.Select(student => student.Flags.OfType<Flag.SavedLate>().Single().Due)
        );
        var read = GradesJson.Read("grades.json", GradesJson.Write(after), dealt).Model!;
        Assert.Equal(after.Students.SelectMany(student => student.Flags), read.Students.SelectMany(student => student.Flags));
    }

    [Fact]
    public void Feedback_is_in_large_print_too()
    {
        var dealt = Deal(Adas).Dealt;
        var grades = GradeClass
            .Run(
                new(
                    dealt,
                    ReturnedFiles.Of([
                        .. dealt.Students.Select(student => new Upload($"{student.Who.Id}.xlsx", () =>
                            new MemoryStream(SmallClass.Filled(dealt, student))
                        )),
                    ])
                ),
                Run.Unwatched
            )
            .Grades;
        Assert.Equal(
            [true, false],
            grades.Students.Select(student => HtmlPages.Feedback(student, dealt).Contains("brief large-print\"", StringComparison.Ordinal))
        );
        Assert.DoesNotContain("name-ada-berg", string.Concat(HtmlPages.FeedbackToPrint(grades, _ => null)), StringComparison.Ordinal);
    }

    [Fact]
    public void Practice_is_in_large_print_too_and_so_is_what_follows_grading()
    {
        var dealt = Deal(Adas).Dealt;
        Assert.Equal(
            [true, false],
            dealt.Students.Select(student =>
                HtmlPages.SelfCheck(dealt, student).Contains("self-check large-print\"", StringComparison.Ordinal)
            )
        );

        var grades = GradeClass
            .Run(
                new(
                    dealt,
                    ReturnedFiles.Of([
                        .. dealt.Students.Select(student => new Upload($"{student.Who.Id}.xlsx", () =>
                            new MemoryStream(DealtWorkbookWriter.Write(dealt, student))
                        )),
                    ])
                ),
                Run.Unwatched
            )
            .Grades;
        var practice = MakeFollowUp.Run(new(dealt, grades, new([], 30, 7)), Run.Unwatched).Model!.Dealt;
        Assert.Equal([(true, 0.25m, null), (false, 0m, (DueMoment?)null)], practice.Students.Select(Arranged));
    }

    private static (bool, decimal, DueMoment?) Arranged(DealtStudent student) => (student.LargePrint, student.ExtraTime, student.Due);

    private static ClassKit.Grading.Results.ClassGrades Saved(ClassKit.Grading.Results.ClassGrades grades, DateTime at) =>
        grades with
        {
            Files = [.. grades.Files.Select(file => file with { Modified = at })],
        };
}
