using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Lessons.Authored;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Exporting;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Inspecting;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Practising;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Direct;

/// <summary>Every use case asked directly: a request of models and streams in, a result and its files in memory out.</summary>
public class UseCaseTests
{
    private static readonly Lesson Lesson = SmallClass.Lesson;

    private static readonly PracticeSet Set = PracticeSet.Of(Lesson) with { Exercises = [.. Lesson.Exercises.Take(2)] };

    private static readonly Roster Roster = new(
        "Invented class",
        [new("ada-berg", "Ada Berg"), new("ben-okoye", "Ben Okoye"), new("cleo-marin", "Cleo Marín")]
    );

    private readonly Watcher _watcher = new();

    private Run Watched => new(_watcher);

    private static DealRequest Deal(ulong seed = 5) => new(Set, Roster, new(SetWish.None, IsSpread: false, seed));

    private static ClassGrades Graded(params Upload[] uploads) =>
        GradesJson
            .Read(
                "grades.json",
                GradesJson.Write(GradeClass.Run(new(SmallClass.Dealt, ReturnedFiles.Of(uploads)), Run.Unwatched).Grades),
                SmallClass.Dealt
            )
            .Model!;

    private static Upload Blank(DealtStudent student) => new($"{student.Who.Id}.xlsx", () => new MemoryStream(SmallClass.Blank(student)));

    [Fact]
    public void Dealing()
    {
        var deal = DealPractice.Run(Deal(), Watched).Model!;

        Assert.Equal(Roster.Students.Select(student => student.Id), deal.Dealt.Students.Select(student => student.Who.Id));
        var files = DealFiles.Of(deal);
        Assert.Equal(
            [
                "answer-key.html",
                "dealt.json",
                "sheets-to-print.html",
                "sheets/ada-berg.html",
                "sheets/ben-okoye.html",
                "sheets/cleo-marin.html",
                "workbooks/ada-berg.xlsx",
                "workbooks/ben-okoye.xlsx",
                "workbooks/cleo-marin.xlsx",
            ],
            files.Select(file => file.Path).Order(StringComparer.Ordinal)
        );
        Assert.All(files, file => Assert.NotEmpty(file.Content));
        Assert.Contains(new Note.Dealt(3, 2, 5, "dealt.json"), DealNotes.Of(deal));
        Assert.Equal(
            [
                new(RunStep.DrawingVariants, 0, null),
                .. Enumerable.Range(0, 7).Select(done => new RunProgress(RunStep.DrawingVariants, done, 6)),
            ],
            _watcher.Seen
        );
    }

    [Fact]
    public void Dealing_again_keeps_whom_it_knows_and_refuses_another_deal()
    {
        var first = DealPractice.Run(Deal(), Run.Unwatched).Model!.Dealt;
        var more = Deal() with
        {
            Earlier = new(null, first),
            Roster = Roster with { Students = [new("aa-first", "Aa First"), .. Roster.Students] },
        };

        var again = DealPractice.Run(more, Run.Unwatched).Model!;
        Assert.Equal(first.GivensOf(first.Students[0]), again.Dealt.GivensOf(again.Dealt.Students[1]));
        Assert.Equal("Aa First", Assert.Single(Assert.Single(DealNotes.Of(again).OfType<Note.AddedToDeal>()).Students).Name);

        var refused = DealPractice.Run(Deal(seed: 6) with { Earlier = new(null, first) }, Run.Unwatched);
        Assert.Contains("would be another one", Assert.Single(refused.Problems).Found, StringComparison.Ordinal);
        var remarked = DealPractice.Run(
            Deal() with
            {
                Set = Set with { Marking = Set.Marking with { TeachAgainBelow = 0.1m } },
                Earlier = new(null, first),
            },
            Run.Unwatched
        );
        Assert.Equal(Content.Diagnostics.Remedy.RegradeUnderOtherMarking, Assert.Single(remarked.Problems).Remedy);
    }

    [Fact]
    public void Practising()
    {
        var practice = MakePractice.Run(new(Set, 5) { Avoid = NumbersToAvoid.OfAnyone(SmallClass.Dealt) }, Watched).Model!;
        Assert.Equal(["practice.html"], PracticeFiles.Of(practice).Select(file => file.Path));

        var each = MakePractice.Run(new(Set, 5) { Roster = Roster }, Run.Unwatched).Model!;
        Assert.Equal(
            ["pages/ada-berg.html", "pages/ben-okoye.html", "pages/cleo-marin.html"],
            PracticeFiles.Of(each).Select(file => file.Path)
        );
        Assert.Contains(new Note.PracticeMade(3, 5), PracticeFiles.Notes(each));
    }

    [Fact]
    public void Following_up()
    {
        var request = new FollowUpRequest(SmallClass.Dealt, Graded(Blank(SmallClass.Ada)), new([], 30, 3));

        var made = MakeFollowUp.Run(request, Watched).Model!;
        Assert.Equal(["ada-berg"], made.Dealt.Students.Select(student => student.Who.Id));
        Assert.Contains("pages/ada-berg.html", FollowUpFiles.Of(made).Select(file => file.Path));
        Assert.Equal(
            ["Ben Okoye", "Cleo Marín"],
            Assert.Single(FollowUpFiles.Notes(made).OfType<Note.NothingGraded>()).Students.Select(student => student.Name)
        );

        var nobody = MakeFollowUp.Run(request with { Wish = new(["zoe"], 30, 3) }, Run.Unwatched);
        Assert.Contains("has the id `zoe`", Assert.Single(nobody.Problems).Found, StringComparison.Ordinal);
        var nothing = MakeFollowUp.Run(request with { Grades = Graded() }, Run.Unwatched);
        Assert.Equal(Content.Diagnostics.Remedy.MakePractice, Assert.Single(nothing.Problems).Remedy);
    }

    [Fact]
    public void Regrading()
    {
        var grading = new GradeRequest(
            SmallClass.Dealt,
            ReturnedFiles.Of(Blank(SmallClass.Ada), new("ben-okoye.xlsx", () => new MemoryStream(SmallClass.Filled(SmallClass.Ben))))
        );
        var earlier = GradesJson
            .Read("grades.json", GradesJson.Write(GradeClass.Run(grading, Run.Unwatched).Grades), SmallClass.Dealt)
            .Model!;
        Assert.Empty(RegradeClass.Run(new(grading, earlier), Watched).Changes);

        var (exercise, part) = (SmallClass.Dealt.Exercises[0].Id, SmallClass.Dealt.Exercises[0].Parts[0].Id);
        var corrected = RegradeClass.Run(
            new(grading with { Corrections = [new("ada-berg", exercise, part, 0.5m, "Shown at the board.")] }, earlier),
            Run.Unwatched
        );
        Assert.Equal("ada-berg", Assert.Single(corrected.Changes).Student.Id);
        Assert.Contains(new Note.Changes(1), RegradeNotes.Of(corrected));
    }

    [Fact]
    public void Grading_with_a_deadline_and_without_names()
    {
        var due = DueWish.Parse("2000-01-01T12:00")!.In(null);
        var graded = GradeClass.Run(
            new(SmallClass.Dealt, ReturnedFiles.Of(Blank(SmallClass.Ada))) { Deadline = new(due) { IsNamed = true } },
            Run.Unwatched
        );
        Assert.Equal(due, graded.Grades.Due);
        Assert.Contains(Content.Diagnostics.Remedy.NameClassProfile, GradeNotes.Remedies(graded));

        var (reports, key) = graded.UnderPseudonyms(new(new byte[32]));
        Assert.DoesNotContain("Ada Berg", Text(GradeFiles.Of(reports), "class-report.html"), StringComparison.Ordinal);
        Assert.Contains("Ada Berg", System.Text.Encoding.UTF8.GetString(GradeFiles.WhoIsWho(key).Content), StringComparison.Ordinal);
    }

    [Fact]
    public void Rehearsing()
    {
        var rehearsal = RehearseLesson.Run(new(Set, 4, new(SetWish.None, IsSpread: false, 9)), Watched).Model!;

        Assert.Equal(rehearsal.Report.Answers, rehearsal.Report.GradedRight);
        Assert.Equal(4 * Set.Exercises.Sum(exercise => exercise.Parts.Count), rehearsal.Report.Answers);
        Assert.Contains(new(RunStep.FillingIn, 4, 4), _watcher.Seen);
        Assert.Contains(_watcher.Seen, progress => progress is { Step: RunStep.Judging, Done: 4, Total: 4 });
        Assert.Equal(
            ["dealt", "graded", "rehearsal.html", "returned"],
            RehearsalFiles.Of(rehearsal).Select(file => file.Path.Split('/')[0]).Distinct().Order(StringComparer.Ordinal)
        );

        using var stop = new CancellationTokenSource();
        var stopper = new Watcher(progress =>
        {
            if (progress is { Step: RunStep.FillingIn, Done: 2 })
                stop.Cancel();
        });
        Assert.Throws<OperationCanceledException>(() =>
            RehearseLesson.Run(new(Set, 4, new(SetWish.None, IsSpread: false, 9)), new(stopper, stop.Token))
        );
        Assert.DoesNotContain(stopper.Seen, progress => progress.Step == RunStep.Judging);
    }

    [Fact]
    public void Making_an_item_bank()
    {
        var request = new ItemBankRequest(Lesson, 2, AsTemplates: false, 1);
        var bank = ExportItems.Run(request, Watched);
        Assert.Equal(2 * Lesson.Exercises.Count, bank.Items);
        Assert.Equal(bank.Package, Assert.Single(ExportItems.Write(request, bank).Files).Content);
    }

    [Fact]
    public void Handing_grades_on()
    {
        var exchange = new GradeExchange("c", "s", "t", "k", new(2026, 11, 1), new(2026, 11, 20), new(2026, 11, 21));
        var tables = ExportGrades.Run(new(Graded(Blank(SmallClass.Ada)), exchange), Watched).Model!;
        Assert.Equal(3, tables.Students);
        Assert.Contains("ada-berg", tables.Results, StringComparison.Ordinal);

        var backwards = ExportGrades.Run(new(Graded(), exchange with { Due = new(2026, 10, 1) }), Run.Unwatched);
        Assert.Equal(Content.Diagnostics.Remedy.NameOtherDays, Assert.Single(backwards.Problems).Remedy);
    }

    [Fact]
    public void Building_a_pack()
    {
        var profile = UsualClass.Profile;
        var pack = BuildPack.Run(new(Lesson, profile, "class.md"), Watched).Model!;
        Assert.Equal(profile.Teams, pack.Class.Teams);
        var files = PackFiles.Of(pack);
        Assert.Contains("index.html", files.Select(file => file.Path));
        Assert.Contains("requisition.xlsx", files.Select(file => file.Path));
        Assert.Equal([RunStep.PlanningBenches], _watcher.Seen.Select(progress => progress.Step).Distinct());
    }

    [Fact]
    public void Inspecting()
    {
        var inspection = InspectWorkbook
            .Run(new(new("ada.xlsx", () => new MemoryStream(SmallClass.Filled(SmallClass.Ada)))), Watched)
            .Model!;
        // Every answer, and on every sheet how far one is.
        Assert.Equal(
            SmallClass.AdasAnswers.Count + SmallClass.Layout.Exercises.Count,
            inspection.Count(InspectionResult.NoStoredValue) + inspection.Count(InspectionResult.Agree)
        );
        Assert.NotEmpty(InspectWorkbook.Run(new(new("no.xlsx", () => new MemoryStream([1, 2, 3]))), Run.Unwatched).Problems);
        Assert.NotEmpty(InspectWorkbook.Run(new(new("no.xlsx", () => throw new IOException("gone"))), Run.Unwatched).Problems);
    }

    private static string Text(IReadOnlyList<OutputFile> files, string path) =>
        System.Text.Encoding.UTF8.GetString(files.Single(file => file.Path == path).Content);
}
