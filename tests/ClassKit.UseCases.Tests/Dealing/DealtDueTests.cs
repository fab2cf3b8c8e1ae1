using System.Text;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>
/// When work is due is part of the deal: students read it on what they are given, and grading knows it without being told.
/// </summary>
public sealed class DealtDueTests : IDisposable
{
    private const string Words = "Friday 20 November 2026, 17:00";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private static readonly PracticeSet Set = PracticeSet.Of(SmallClass.Lesson) with
    {
        Exercises = [.. SmallClass.Lesson.Exercises.Take(2)],
    };

    private static DealRequest Request(string? due, string? zone = "Europe/Paris", DealtClass? before = null) =>
        new(
            Set,
            new("Invented class", [new("ada-berg", "Ada Berg"), new("ben-okoye", "Ben Okoye")])
            {
                TimeZone = zone is null ? null : ClassTimeZone.Find(zone),
            },
            new(SetWish.None, IsSpread: false, 11) { Due = due is null ? null : DueWish.Parse(due) }
        )
        {
            Earlier = before is null ? EarlierDeal.None : new("my-deal", before),
        };

    private static DealMade Deal(string? due, string? zone = "Europe/Paris", DealtClass? before = null) =>
        DealPractice.Run(Request(due, zone, before), Run.Unwatched).Model!;

    private Produced Grade(DealtClass dealt, string? due = null)
    {
        _folder.Write("dealt/dealt.json", Encoding.UTF8.GetBytes(DealtJson.Write(dealt)));
        _folder.Write("returned/ada-berg.xlsx", SmallClass.Filled(dealt, dealt.Students[0]));
        return GradeCommands.Grade(
            new GradePaths(_folder.Of("dealt"), _folder.Of("returned"))
            {
                Due = due is null ? null : DueWish.Parse(due),
                Graded = _folder.Of("graded"),
            }
        );
    }

    [Fact]
    public void It_stands_on_the_start_sheet_and_on_the_printed_sheet_in_the_words_people_use()
    {
        var files = DealFiles.Of(Deal("2026-11-20T17:00"));

        var workbook = ReturnedWorkbookReader.Read(files.Single(file => file.Path == "workbooks/ada-berg.xlsx").Content).Workbook!;
        var label = workbook
            .Sheets.Single(sheet => sheet.Name == StartPlan.Usual.Sheet)
            .Cells.Single(cell => cell.Value.Stored is { IsText: true, Text: StartPlan.DueLabel })
            .Key;
        Assert.Equal(Words, workbook.Find(new(StartPlan.Usual.Sheet, label.Row, label.Column + 1))!.Stored.Text);
        Assert.Contains(
            $"Due {Words}.",
            Encoding.UTF8.GetString(files.Single(file => file.Path == "sheets/ada-berg.html").Content),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Without_it_nothing_is_said_of_it_and_the_files_are_as_they_were()
    {
        var deal = Deal(null);
        Assert.Null(deal.Dealt.Due);
        Assert.DoesNotContain("\"due\"", DealtJson.Write(deal.Dealt), StringComparison.Ordinal);
        Assert.DoesNotContain(
            Words,
            Encoding.UTF8.GetString(DealFiles.Of(deal).Single(file => file.Path == "sheets/ada-berg.html").Content),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(DealNotes.Of(deal), note => note is Note.DueAsNamed);
    }

    [Fact]
    public void It_is_read_again_from_the_deal_and_does_not_make_it_another_one()
    {
        var dealt = Deal("2026-11-20T17:00").Dealt;
        Assert.Equal(dealt.Due, DealtJson.Read("dealt.json", DealtJson.Write(dealt)).Model!.Due);
        Assert.Equal(Deal(null).Dealt.Identity, dealt.Identity);
    }

    [Fact]
    public void How_it_was_found_is_said()
    {
        Assert.Equal("2026-11-20 17:00 (Europe/Paris)", Named("2026-11-20T17:00").Due.ToString());
        Assert.Equal(DueReading.ZoneAssumed, Named("2026-11-20T17:00", zone: null).Due.Reading);
        Assert.Contains(Content.Diagnostics.Remedy.NameClassProfile, DealPaths.Write(Deal("2026-11-20T17:00", zone: null)).Remedies);
        // 02:30 does not occur in Paris that night (tz source, rule EU).
        Assert.Equal(DueReading.Skipped, Named("2026-03-29T02:30").Due.Reading);

        static Note.DueAsNamed Named(string due, string? zone = "Europe/Paris") =>
            Assert.Single(DealNotes.Of(Deal(due, zone)).OfType<Note.DueAsNamed>());
    }

    [Fact]
    public void Grading_knows_it_without_being_told()
    {
        var dealt = Deal("2026-11-20T17:00").Dealt;
        var graded = Grade(dealt);

        Assert.Contains(new Note.DueAsBefore(dealt.Due!, AsDealt: true), graded.Notes);
        var record = GradesJson
            .Read("grades.json", Encoding.UTF8.GetString(graded.Files.Single(file => file.Path == "grades.json").Content), dealt)
            .Model!;
        Assert.Equal((dealt.Due, dealt.Due), (record.Due, record.Dealt.Due));
    }

    [Fact]
    public void What_the_instructor_names_when_grading_wins_and_that_is_said_and_kept()
    {
        var dealt = Deal("1970-01-01T12:00").Dealt;
        var graded = Grade(dealt, "2100-01-01T12:00");
        var changed = Assert.Single(graded.Notes.OfType<Note.DueChanged>());
        Assert.Equal((dealt.Due, "2100-01-01 12:00 (Europe/Paris)", true), (changed.Before, changed.Now!.ToString(), changed.AsDealt));

        _folder.Write("graded/grades.json", graded.Files.Single(file => file.Path == "grades.json").Content);
        Assert.False(Assert.Single(Grade(dealt).Notes.OfType<Note.DueAsBefore>()).AsDealt);

        _folder.Write("graded/grades.json", Grade(dealt, "none").Files.Single(file => file.Path == "grades.json").Content);
        Assert.DoesNotContain(Grade(dealt).Notes, note => note is Note.DueAsBefore or Note.DueAsNamed or Note.DueChanged);
    }

    [Fact]
    public void A_student_who_is_added_gets_the_same_and_a_deal_is_never_made_due_at_another_moment()
    {
        var first = Deal("2026-11-20T17:00").Dealt;
        Assert.Equal(first.Due, Deal(null, before: first).Dealt.Due);
        Assert.Equal(first.Due, Deal(null, zone: null, before: first).Dealt.Due);
        Assert.Equal(first.Due, Deal("2026-11-20T16:00Z", before: first).Dealt.Due);

        foreach (var other in (string[])["2026-11-27T17:00", "none"])
        {
            var refused = Assert.Single(DealPractice.Run(Request(other, before: first), Run.Unwatched).Problems);
            Assert.Contains($"and was due {Words}", refused.Found, StringComparison.Ordinal);
        }
        Assert.Contains(
            "and was to come at any time",
            Assert.Single(DealPractice.Run(Request("2026-11-27T17:00", before: Deal(null).Dealt), Run.Unwatched).Problems).Found,
            StringComparison.Ordinal
        );
    }
}
