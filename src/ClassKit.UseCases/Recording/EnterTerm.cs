using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Notes;
using ClassKit.Records.Arrangements;
using ClassKit.Records.Classes;
using ClassKit.Records.Marks;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Notes;

namespace ClassKit.UseCases.Recording;

/// <summary>Puts a term on record: its works, which deals they were, what was seen at the bench, and the marks that were typed. The record
/// follows the files: a mark that was taken out of them goes off the record, and who is on the class list no more has left; the log keeps
/// both.</summary>
public static class EnterTerm
{
    /// <summary>The term that a file describes, with the deals of its calculation sets.</summary>
    /// <param name="path">The description of the term.</param>
    /// <param name="make">Makes the request of both.</param>
    public static Reading<EnterTermRequest> Read(string path, Func<TermPlan, IReadOnlyDictionary<string, SatDeals>, EnterTermRequest> make)
    {
        ArgumentNullException.ThrowIfNull(make);
        var plan = TermReader.Read(path);
        if (!plan.Succeeded)
            return new(null, plan.Problems);
        var deals = TermDeals.Of(plan.Model);
        return deals.Succeeded ? new(make(plan.Model, deals.Model), []) : new(null, deals.Problems);
    }

    /// <summary>Puts it on record.</summary>
    /// <returns>What is on record now, or why nothing was written.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<EnteredTerm> Run(EnterTermRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var whole = request.Plan;
        var called = request.Class ?? whole.Class.Cohort;
        if (called.Length == 0)
            return new(
                null,
                [
                    new(
                        whole.Path,
                        null,
                        "Nobody has said what the class is called",
                        "Name the class profile in the term's front matter, or name the class."
                    ),
                ]
            );
        return RecordTroubles.Told(() => request.Record.Write(request.Author.Of(EnterGrades.Kind, $"{called}: {whole.Title}"), session =>
            {
                var entered = Enter(session, called, request, run);
                if (!entered.Succeeded)
                    session.Abandon();
                return entered;
            }));
    }

    private static Reading<EnteredTerm> Enter(WritingSession session, string called, EnterTermRequest request, Run run)
    {
        var whole = request.Plan;
        var erased = StillErased.Among(session, whole.Class.Students.Select(student => student.Id));
        var plan = StillErased.Without(whole, erased);
        var named = ClassRegister.Put(session, called);
        var others = ClassRegister.Enrol(session, named, plan.Class.Students, request.Author.Today);
        if (others.Count > 0)
            return new(null, [.. others.Select(EnterGrades.Of)]);
        var listed = plan.Class.Students.Select(student => student.Id).ToHashSet(StringComparer.Ordinal);
        var left = Leave(session, named, listed, request.Author.Today);
        ArrangementRegister.Put(session, named, Arrangements(plan), request.Author.Today);
        var term = TermRegister.Put(session, named, plan.Title);
        List<Diagnostic> problems = [];
        List<(string Work, int Taken, int Left)> followed =
        [
            .. run.Each(RunStep.Recording, plan.Works.Index().ToList())
                .Select(work =>
                    FilesFollowed.Of(session, Enter(session, term, work.Index, work.Item, request, problems), work.Item, listed)
                ),
        ];
        return problems.Count > 0
            ? new(null, problems)
            : new(
                new(called, plan.Title, plan.Works.Count, plan.Works.Sum(Marks))
                {
                    StillErased = erased.Count,
                    TakenOff = followed.Sum(work => work.Taken),
                    Unfiled = [.. followed.Where(work => work.Left > 0).Select(work => work.Work)],
                    Left = left,
                },
                []
            );
    }

    private static IReadOnlyList<(string Student, string What)> Arrangements(TermPlan plan) =>
        [
            .. plan.Class.Students.SelectMany(student =>
                ArrangementWords.Each(plan.Class.ArrangementOf(student.Id), plan.Class.TimeZone).Select(what => (student.Id, what))
            ),
        ];

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(EnteredTerm entered)
    {
        ArgumentNullException.ThrowIfNull(entered);
        return new([], [.. Notes(entered), .. StillErased.Notes(entered.StillErased)], []);
    }

    private static IEnumerable<Note> Notes(EnteredTerm entered)
    {
        yield return new Note.TermEntered(entered.Class, entered.Title, entered.Works, entered.Marks);
        if (entered.TakenOff > 0)
            yield return new Note.MarksTakenOff(entered.TakenOff);
        if (entered.Unfiled.Count > 0)
            yield return new Note.MarksWithoutFile(entered.Unfiled);
        if (entered.Left.Count > 0)
            yield return new Note.EnrolmentEnded(entered.Class, entered.Left);
    }

    /// <summary>Ends the enrolment of whoever is on the class list no more.</summary>
    private static IReadOnlyList<Student> Leave(WritingSession session, RecordedClass named, HashSet<string> listed, DateOnly today) =>
        [
            .. ClassRegister
                .Of(session, named)
                .Where(one =>
                    one.Until is null && !listed.Contains(one.Student.Id) && ClassRegister.Leave(session, named, one.Student.Id, today)
                )
                .Select(one => one.Student),
        ];

    private static RecordedWork Enter(
        WritingSession session,
        RecordedTerm term,
        int place,
        PlannedWork planned,
        EnterTermRequest request,
        List<Diagnostic> problems
    )
    {
        var deals = request.Deals.GetValueOrDefault(planned.Title);
        var work = TermRegister.PutWork(
            session,
            term,
            place,
            new(planned.Title, planned.Title, planned.Kind, planned.Category, planned.OutOf ?? deals?.OutOf),
            due: deals?.Due
        );
        foreach (var (sitting, deal) in (deals?.Digests ?? []).Index())
        {
            if (!TermRegister.Sit(session, work, sitting + 1, deal))
                problems.Add(
                    new(
                        request.Plan.Path,
                        planned.Line,
                        $"The grades of `{planned.Graded[sitting]}` are not on record",
                        "Enter that folder first, and then the term."
                    )
                );
        }
        if (deals is { Digests.Count: > 0 })
            TermRegister.TakeAwaySittingsAfter(session, work, deals.Digests.Count);
        foreach (var (sitting, marking) in planned.Bench.Index())
        {
            if (!BenchRegister.Measure(session, work, marking.Scale))
            {
                problems.Add(
                    new(
                        request.Plan.Path,
                        planned.Line,
                        $"`{planned.Title}` was marked by another rubric, whose marks are on record",
                        "Put the rubric back as it was, or give the work another name."
                    )
                );
                continue;
            }
            BenchRegister.Put(session, work, sitting + 1, 1, marking.First);
            if (marking.Second is { } second)
                BenchRegister.Put(session, work, sitting + 1, 2, second);
        }
        foreach (var typed in planned.Typed)
            TypedMarks.Put(session, work, new(typed.Student, planned.Title, typed.Sitting, typed.Mark));
        return work;
    }

    private static int Marks(PlannedWork work) =>
        work.Typed.Count + work.Bench.Sum(marking => marking.First.Places.Count + (marking.Second?.Places.Count ?? 0));
}
