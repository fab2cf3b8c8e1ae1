using ClassKit.Notes;
using ClassKit.Records.Marks;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Recording;

/// <summary>The demo term weighed from the record, and its grades frozen.</summary>
public sealed class TermOnRecordTests : IDisposable
{
    private static readonly Author Kim = new(new(2026, 12, 18, 12, 0, 0, TimeSpan.Zero), "Kim", "");

    private static readonly string Path = System.IO.Path.Combine(
        DemoMaterial.Find(AppContext.BaseDirectory)!.Root,
        "demo-cohort",
        "term",
        "term.md"
    );

    private readonly TeachingRecord _record = TeachingRecord.InMemory();
    private readonly string _class;

    public TermOnRecordTests()
    {
        var request = EnterTerm.Read(Path, (plan, deals) => new(_record, Kim, null, plan, deals)).Model!;
        Assert.Empty(EnterTerm.Run(request, Run.Unwatched).Problems);
        _class = request.Plan.Class.Cohort;
    }

    public void Dispose() => _record.Dispose();

    [Fact]
    public void Grades_from_the_record_are_the_grades_from_the_files()
    {
        var files = WeighTerm.Write(WeighTerm.Run(WeighTerm.Read(Path).Model!, Run.Unwatched));
        var record = WeighTerm.Write(WeighTerm.Run(TermOnRecord.Read(Path, _record, null).Model!, Run.Unwatched));

        Assert.Equal(files.Notes.Select(note => note.ToString()), record.Notes.Select(note => note.ToString()));
        Assert.Equal(
            files.Files.Where(IsPage).Select(file => (file.Path, Convert.ToBase64String(file.Content))),
            record.Files.Where(IsPage).Select(file => (file.Path, Convert.ToBase64String(file.Content)))
        );
    }

    [Fact]
    public void A_frozen_grade_stays_and_a_later_change_says_who_and_by_which_work_before_it_is_written()
    {
        Assert.Equal((1, 0), Told(Freeze(isMeant: true)));
        Assert.Equal((null, 0), Told(Freeze(isMeant: true)));
        var before = Frozen();
        var student = before[0].Student;
        var work = _record
            .Read(session => TermRegister.Works(session, TermOnRecord.Find(session, _class, "How breads rise, autumn")!))
            .First(work => work.Assignment.Title == "Safety questions");
        _record.Write(new(Kim.Now, "Kim", "test", "", "marked anew"), session =>
        {
            TypedMarks.Put(session, work, new(student, work.Assignment.Id, 1, Mark.Of(0.25m, 12)));
            return true;
        });

        var seen = Freeze(isMeant: false);

        var change = Assert.Single(seen.Changes);
        Assert.Equal("Safety questions", Assert.Single(change.Works).Work);
        Assert.Equal(0.25m / 12, change.Works[0].Now);
        Assert.Equal(before.Select(grade => (grade.Student, grade.Percent)), Frozen().Select(grade => (grade.Student, grade.Percent)));
        Assert.Equal((2, 1), Told(Freeze(isMeant: true)));
        Assert.NotEqual(before[0].Percent, Frozen()[0].Percent);
        Assert.Equal(2 * before.Count, _record.Read(session => session.Number("SELECT count(*) FROM frozen_grade")));
    }

    /// <summary>
    /// Answers that nobody decided on count neither for nor against, so that a grade which they may change is no final one.
    /// </summary>
    [Fact]
    public void Whoever_has_an_answer_to_be_decided_on_is_counted_among_the_grades_that_may_still_change()
    {
        var open = Freeze(isMeant: false).Open;
        var final = TermGrader.Grade(Term).First(grade => !grade.IsProvisional).Student.Id;
        var attempt = Term.Attempts.First(one => one.Student == final && one.Mark.State == MarkState.Marked);
        var waiting = Term with
        {
            Attempts = [.. Term.Attempts.Select(one => one == attempt ? one with { Mark = one.Mark with { Undecided = 1 } } : one)],
        };

        Assert.Equal(open + 1, FreezeTerm.Run(new(_record, Kim, _class, waiting, IsMeant: false), Run.Unwatched).Model!.Open);
        var weighed = WeighTerm.Run(new(waiting, [], []), Run.Unwatched);
        Assert.Equal(open + 1, Assert.Single(WeighTerm.Write(weighed).Notes.OfType<Note.Provisional>()).Students);
        Assert.Contains(
            "What waits for your decision",
            System.Text.Encoding.UTF8.GetString(WeighTerm.Write(weighed).Files.Single(file => file.Path == "term-report.html").Content),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_term_that_is_not_on_record_is_asked_for() =>
        Assert.Contains(
            "Enter the term first",
            Assert.Single(TermOnRecord.Read(Path, _record, "Cooks 9").Problems).Expected,
            StringComparison.Ordinal
        );

    private ClassKit.Terms.Work.SchoolTerm Term => TermOnRecord.Read(Path, _record, null).Model!.Term;

    private FrozenTerm Freeze(bool isMeant) => FreezeTerm.Run(new(_record, Kim, _class, Term, isMeant), Run.Unwatched).Model!;

    private IReadOnlyList<ClassKit.Records.Grades.FrozenGrade> Frozen() =>
        _record.Read(session =>
            ClassKit.Records.Grades.FrozenGrades.Of(session, TermOnRecord.Find(session, _class, "How breads rise, autumn")!)
        );

    private static (int?, int) Told(FrozenTerm frozen) =>
        Assert.IsType<Note.Frozen>(Assert.Single(FreezeTerm.Write(frozen).Notes)) is var note
            ? (note.Number, note.Differences.Count)
            : default;

    private static bool IsPage(UseCases.Output.OutputFile file) => file.Path.EndsWith(".html", StringComparison.Ordinal);
}
