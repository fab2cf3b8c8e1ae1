using ClassKit.Content.Rubrics;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Records.Arrangements;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;
using ClassKit.UseCases.Tests.Records;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Terms;

/// <summary>
/// A term follows what is arranged with students, keeps it on record from when to when, and knows in which order a work was sat.
/// </summary>
public sealed class ArrangedTermTests
{
    private static readonly GradeRule Rule = GradeRuleReader
        .Read(Path.Combine(DemoMaterial.Find(AppContext.BaseDirectory)!.Root, "rubrics", "term-grade.md"))
        .Model!;

    private static readonly PlannedWork Questions = new("Safety questions", WorkKind.TypedMarks, "Written work", 12, 7)
    {
        Typed = [new("ada", 1, Mark.Of(6, 12), "marks.csv", 2)],
    };

    private static TermPlan Plan(Arrangement adas, Arrangement bens, params PlannedWork[] works) =>
        new(
            "term.md",
            "Autumn",
            new("Bakers 1", [new("ada", "Ada Berg"), new("ben", "Ben Okoye")])
            {
                Arrangements = new Dictionary<string, Arrangement> { ["ada"] = adas, ["ben"] = bens },
            },
            Rule,
            works,
            []
        );

    [Fact]
    public void Who_is_excused_from_a_work_has_that_word_and_who_sat_it_nevertheless_has_the_mark()
    {
        var excused = Arrangement.None with { ExcusedFrom = ["Safety questions"] };
        var term = TermAssembly.Of(Plan(excused, excused, Questions)).Model!.Term;

        Assert.Equal(
            [("ada", MarkState.Marked), ("ben", MarkState.Excused)],
            term.Attempts.Select(attempt => (attempt.Student, attempt.Mark.State))
        );
    }

    [Fact]
    public void Who_has_a_mark_and_is_excused_has_the_excuse_and_that_is_told()
    {
        var excused = Questions with { Typed = [new("ada", 1, Mark.Excused, "marks.csv", 2), new("ben", 1, Mark.Excused, "marks.csv", 3)] };
        var request = TermAssembly
            .Of(Plan(Arrangement.None, Arrangement.None, excused), (work, _, _) =>
                new GradedWork(12, [new("ada", work.Title, 1, Mark.Of(6, 12))], [])
            )
            .Model!;

        Assert.All(request.Term.Attempts, attempt => Assert.Equal(MarkState.Excused, attempt.Mark.State));
        var told = Assert.IsType<Note.MarkedAndExcused>(Assert.Single(request.Notes));
        Assert.Equal(("Safety questions", "ada"), (told.Work, Assert.Single(told.Students).Id));
    }

    [Fact]
    public void Who_is_excused_from_a_lesson_is_excused_from_the_work_that_was_dealt_from_it()
    {
        var attempts = Excusals.With(
            Plan(Arrangement.None with { ExcusedFrom = ["muffins"] }, Arrangement.None),
            Questions,
            ["muffins"],
            []
        );

        Assert.Equal(
            [("ada", "Safety questions", 1, Mark.Excused)],
            attempts.Select(attempt => (attempt.Student, attempt.Assignment, attempt.Sitting, attempt.Mark))
        );
    }

    [Fact]
    public void A_resit_stands_behind_the_deal_that_it_replaces()
    {
        var work = new PlannedWork("Sums", WorkKind.CalculationSet, "Calculations", null, 9);
        var first = SmallClass.Dealt;
        var again = first with { Identity = DealIdentity.Read(new string('a', 64)), Replaces = first.Identity };
        List<(string, DealtClass)> right = [("graded", first), ("resit", again)],
            swapped = [("resit", again), ("graded", first)];

        Assert.Empty(SittingOrder.Faults(Plan(Arrangement.None, Arrangement.None), work, right));
        var fault = Assert.Single(SittingOrder.Faults(Plan(Arrangement.None, Arrangement.None), work, swapped));
        Assert.Equal(("term.md", 9), (fault.File, fault.Line));
        Assert.Contains($"resit of deal {first.Identity!.Code}", fault.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void The_record_knows_what_was_arranged_from_when_to_when_and_says_it_of_the_student()
    {
        using var record = TeachingRecord.InMemory();
        Enter(record, new(2026, 9, 7), Arrangement.None with { LeavesOut = ["three_trays"], ExcusedFrom = ["muffins"] });
        Enter(record, new(2026, 10, 5), new(LargePrint: true, 0.25m, null) { ExcusedFrom = ["muffins"] });
        Enter(record, new(2026, 10, 6), new(LargePrint: true, 0.25m, null) { ExcusedFrom = ["muffins"] });

        var arranged = record.Read(session => ArrangementRegister.OfStudent(session, "ada"));
        Assert.Equal(
            [
                ("without three_trays", new(2026, 9, 7), new DateOnly(2026, 10, 5)),
                ("excused from muffins", new(2026, 9, 7), null),
                ("large print", new(2026, 10, 5), null),
                ("25 % more time", new(2026, 10, 5), (DateOnly?)null),
            ],
            arranged.Select(one => (one.What.Replace('\u00A0', ' '), one.Since, one.Until))
        );
        var shown = ShowStudent
            .Write(ShowStudent.Run(new(record, "ada"), Run.Unwatched).Model!)
            .Files.Single(file => file.Path == "arrangements.csv");
        Assert.Contains(
            "Bakers 1,without three_trays,2026-09-07,2026-10-05",
            System.Text.Encoding.UTF8.GetString(shown.Content),
            StringComparison.Ordinal
        );
        Assert.Empty(record.Read(session => ArrangementRegister.OfStudent(session, "ben")));
    }

    [Fact]
    public void A_workbook_that_came_back_empty_is_no_mark_until_somebody_says_that_it_is_handed_in()
    {
        var work = new PlannedWork("Sums", WorkKind.CalculationSet, "Calculations", null, 9);
        var grades = AnyGrades.Of(SmallClass.Dealt, 1);
        var who = grades.Students.First(student => student.Status == GradeStatus.Graded).Who;
        ClassGrades With(Func<AnswerGrade, int, AnswerGrade> change) =>
            grades with
            {
                Students =
                [
                    .. grades.Students.Select(student =>
                        student.Who != who
                            ? student
                            : student with
                            {
                                Answers =
                                [
                                    .. student.Answers.Select(
                                        (answer, at) =>
                                            change(
                                                answer with
                                                {
                                                    Outcome = Outcome.Blank,
                                                    Points = 0,
                                                    OutOf = answer.Part.Points,
                                                    Correction = null,
                                                    Paper = null,
                                                },
                                                at
                                            )
                                    ),
                                ],
                                Stated = null,
                            }
                    ),
                ],
            };
        var plan = Plan(Arrangement.None, Arrangement.None) with
        {
            Class = new("Bakers 1", [.. grades.Students.Select(student => student.Who)]),
        };
        (IEnumerable<Attempt> His, List<Note> Notes) Term(ClassGrades graded)
        {
            List<Note> notes = [];
            return (GradedWork.Of(work, plan, [(1, graded)], notes).Attempts.Where(attempt => attempt.Student == who.Id), notes);
        }

        var (empty, told) = Term(With((answer, _) => answer));
        Assert.Empty(empty);
        Assert.Contains(told, note => note is Note.EmptyLeftOut("Sums", var students) && students.Contains(who));

        // One answer with something in it, or one word of the instructor's, and it is a mark like any other.
        foreach (
            var handedIn in new[]
            {
                With((answer, at) => at == 0 ? answer with { Outcome = Outcome.Incorrect } : answer),
                With((answer, at) => at == 0 ? answer with { Correction = new(0, "Handed in like that") } : answer),
            }
        )
        {
            var (his, others) = Term(handedIn);
            Assert.Equal((MarkState.Marked, 0m), (Assert.Single(his).Mark.State, his.Single().Mark.Points));
            Assert.DoesNotContain(others, note => note is Note.EmptyLeftOut(_, var students) && students.Contains(who));
        }
    }

    [Fact]
    public void A_mark_says_how_many_of_its_answers_nobody_decided_on()
    {
        var work = new PlannedWork("Sums", WorkKind.CalculationSet, "Calculations", null, 9);
        var seen = 0;
        foreach (var grades in Enumerable.Range(0, 60).Select(seed => AnyGrades.Of(SmallClass.Dealt, seed)))
        {
            var plan = Plan(Arrangement.None, Arrangement.None) with
            {
                Class = new("Bakers 1", [.. grades.Students.Select(student => student.Who)]),
            };
            foreach (var attempt in GradedWork.Of(work, plan, [(1, grades)], []).Attempts)
            {
                var asked = grades.Students.First(student => student.Who.Id == attempt.Student).Answers.Count(answer => answer.IsUndecided);
                Assert.Equal(asked, attempt.Mark.Undecided);
                seen += asked;
            }
        }
        Assert.NotEqual(0, seen);
    }

    /// <summary>A list that was numbered anew gives ids to others: no mark goes with them unless the list says who was called how.</summary>
    [Fact]
    public void A_mark_goes_to_nobody_who_only_has_the_id()
    {
        var work = new PlannedWork("Sums", WorkKind.CalculationSet, "Calculations", null, 9);
        var grades = AnyGrades.Of(SmallClass.Dealt, 3);
        List<Student> students = [.. grades.Students.Select(student => student.Who)];
        IReadOnlyList<string> Marked(params Student[] now) =>
            [
                .. GradedWork
                    .Of(work, Plan(Arrangement.None, Arrangement.None) with { Class = new("Bakers 1", now) }, [(1, grades)], [])
                    .Attempts.Select(attempt => attempt.Student),
            ];
        var all = Marked([.. students]);
        var one = students.First(student => all.Contains(student.Id));
        Student[] With(Student other) => [.. students.Select(student => student.Id == one.Id ? other : student)];

        Assert.DoesNotContain(one.Id, Marked(With(one with { Name = "Zoe Lund", Shown = "Zoe Lund" })));
        Assert.Equal(all.Count - 1, Marked(With(one with { Name = "Zoe Lund" })).Count);
        Assert.Equal(all, Marked(With(one with { Name = "Zoe Lund", Formerly = $"Zoe Berg; {one.Name}" })));
        Assert.Equal(all, Marked(With(one with { Name = one.Name.ToUpperInvariant() })));
    }

    /// <summary>
    /// A grade given out from the record is the grade that the files come to, also where a mark or a marker was taken out of them in
    /// between.
    /// </summary>
    [Fact]
    public void A_mark_that_was_taken_out_of_the_files_goes_off_the_record_and_its_log_keeps_it()
    {
        using var record = TeachingRecord.InMemory();
        BenchSheet Seen(params string[] students) => new("Kim", students.ToDictionary(student => student, _ => (IReadOnlyList<int>)[1]));
        PlannedWork Bench(BenchSheet first, BenchSheet? second) =>
            new("Loaf", WorkKind.BenchWork, "Bench work", 3, 8)
            {
                Bench = [new(new([("Safe", 3)], [0, 1], ["not yet", "fully"]), first, second)],
            };
        PlannedWork Typed(params string[] students) =>
            Questions with
            {
                Typed = [.. students.Select(student => new TypedMark(student, 1, Mark.Of(6, 12), "marks.csv", 2))],
            };
        EnteredTerm Entered(params PlannedWork[] works) =>
            EnterTerm
                .Run(
                    new(record, Kim, null, Plan(Arrangement.None, Arrangement.None, works), new Dictionary<string, SatDeals>()),
                    Run.Unwatched
                )
                .Model!;
        Entered(Typed("ada", "ben"), Bench(Seen("ada", "ben"), Seen("ada")));

        var followed = Entered(Typed("ben"), Bench(Seen("ada"), null));
        Assert.Equal((3, 0), (followed.TakenOff, followed.Unfiled.Count));
        Assert.Equal(new Note.MarksTakenOff(3), Assert.Single(EnterTerm.Write(followed).Notes.OfType<Note.MarksTakenOff>()));
        var changes = ShowStudent.Run(new(record, "ada"), Run.Unwatched).Model!;
        Assert.Equal(
            ["bench_mark", "typed_mark"],
            changes.Changes.SelectMany(change => change.Rows).Where(row => row.After is null).Select(row => row.Table).Order()
        );
        Assert.Equal((0, 1), (changes.Marks.Count, changes.Bench.Count));

        // A table that is missing takes nothing along.
        var missing = Entered(Questions with { Typed = [] }, Bench(Seen("ada"), null));
        Assert.Equal(0, missing.TakenOff);
        Assert.Equal(["Safety questions"], missing.Unfiled);
    }

    [Fact]
    public void Who_is_on_the_class_list_no_more_has_left_and_earlier_work_brings_nobody_back()
    {
        using var record = TeachingRecord.InMemory();
        EnteredTerm Entered(TermPlan plan) =>
            EnterTerm.Run(new(record, Kim, null, plan, new Dictionary<string, SatDeals>()), Run.Unwatched).Model!;
        var all = Plan(Arrangement.None, Arrangement.None, Questions);
        Entered(all);

        Assert.Equal(
            "Ben Okoye",
            Assert.Single(Entered(all with { Class = all.Class with { Students = [.. all.Class.Students.Take(1)] } }).Left).Name
        );
        record.Write(Kim.Of("enter", ""), session =>
            ClassRegister.Enrol(session, ClassRegister.Find(session, "Bakers 1")!, all.Class.Students, new(2027, 1, 8), comeBack: false)
        );

        Assert.Equal(
            ["ada", "ben until 2026-12-18"],
            record
                .Read(session => ClassRegister.Of(session, ClassRegister.Find(session, "Bakers 1")!))
                .Select(one => one.Until is { } until ? $"{one.Student.Id} until {until:yyyy-MM-dd}" : one.Student.Id)
        );
        Assert.Empty(Entered(all).Left);
    }

    private static readonly Author Kim = new(new(2026, 12, 18, 12, 0, 0, TimeSpan.Zero), "Kim", "");

    private static void Enter(TeachingRecord record, DateOnly on, Arrangement adas) =>
        Assert.Empty(
            EnterTerm
                .Run(
                    new(
                        record,
                        new(new(on, new(12, 0), TimeSpan.Zero), "Kim", ""),
                        null,
                        Plan(adas, Arrangement.None, Questions),
                        new Dictionary<string, SatDeals>()
                    ),
                    Run.Unwatched
                )
                .Problems
        );
}
