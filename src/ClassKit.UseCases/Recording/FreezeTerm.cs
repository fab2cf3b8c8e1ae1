using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.Records.Grades;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Work;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>
/// Keeps the grades of a term as they were given out. Later marks do not change them; freezing again says first who would change, and by
/// which work.
/// </summary>
public static class FreezeTerm
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "freeze";

    /// <summary>Freezes, or says what it would come to.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<FrozenTerm> Run(FreezeRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var term = request.Term;
        List<FrozenGrade> now =
        [
            .. TermGrader.Grade(term, run.Each(RunStep.Weighing, term.Class.Students)).Select(grade => Of(grade, term)),
        ];
        return RecordTroubles.Told(() => request.Record.Write(request.Author.Of(Kind, $"{request.Class}: {term.Title}"), session =>
            {
                if (TermOnRecord.Find(session, request.Class, term.Title) is not { } recorded)
                    return new Reading<FrozenTerm>(
                        null,
                        [
                            new(
                                term.Title,
                                null,
                                $"The record has no such term of a class `{request.Class}`",
                                "Enter the term first, or name the class as the record does."
                            ),
                        ]
                    );
                var before = FrozenGrades.Of(session, recorded).ToDictionary(grade => grade.Student);
                List<FrozenChange> changes =
                    before.Count == 0
                        ? []
                        : [.. now.Select(grade => Between(term, before.GetValueOrDefault(grade.Student), grade)).OfType<FrozenChange>()];
                var isNew = before.Count == 0 || changes.Count > 0;
                var number = isNew ? FrozenGrades.Put(session, recorded, now) : (int?)null;
                if (!request.IsMeant || !isNew)
                    session.Abandon();
                return new(
                    new(term.Title, now.Count, number, changes)
                    {
                        Open = now.Count(grade => grade.IsProvisional),
                        IsAsked = !request.IsMeant,
                    },
                    []
                );
            }));
    }

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(FrozenTerm frozen)
    {
        ArgumentNullException.ThrowIfNull(frozen);
        return new(
            [],
            [
                new Note.Frozen(frozen.Title, frozen.Students, frozen.Number, frozen.Changes)
                {
                    Open = frozen.Open,
                    IsAsked = frozen.IsAsked,
                },
            ],
            []
        );
    }

    private static FrozenGrade Of(TermGrade grade, SchoolTerm term) =>
        new(
            grade.Student.Id,
            grade.Place is { } place ? term.Rule.Scale.Steps[place].Grade : null,
            grade.Percent,
            grade.Rounded,
            grade.IsProvisional,
            [.. grade.Works.Select(work => new FrozenWork(work.Assignment.Title, FrozenStanding.Of(work.Standing), work.Share))]
        );

    private static FrozenChange? Between(SchoolTerm term, FrozenGrade? before, FrozenGrade now)
    {
        var shown = term.Class.Students.First(student => student.Id == now.Student).Shown;
        if (before is null)
            return new(shown, null, now.Grade, null, now.Rounded, []);
        var works = before.Works.ToDictionary(work => work.Title);
        List<FrozenWorkChange> changed =
        [
            .. now
                .Works.Select(work => (Was: works.GetValueOrDefault(work.Title), Now: work))
                .Where(work => (work.Was?.Share, IsDropped(work.Was)) != (work.Now.Share, IsDropped(work.Now)))
                .Select(work => new FrozenWorkChange(work.Now.Title, work.Was?.Share, work.Now.Share)
                {
                    WasDropped = IsDropped(work.Was),
                    IsDropped = IsDropped(work.Now),
                }),
        ];
        return
            changed.Count == 0
            && (before.Grade, before.Percent, before.Rounded, before.IsProvisional)
                == (now.Grade, now.Percent, now.Rounded, now.IsProvisional)
            ? null
            : new(shown, before.Grade, now.Grade, before.Rounded, now.Rounded, changed);
    }

    private static bool IsDropped(FrozenWork? work) => work?.Standing == FrozenStanding.Dropped;
}
