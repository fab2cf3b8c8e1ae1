using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// Who sits a deal, of those who are on the roster: some are excused, some leave exercises out, and a resit is for those who sat before.
/// </summary>
internal static class Sitting
{
    /// <summary>The roster without those who are excused and hold nothing of it yet, or why nobody can sit.</summary>
    public static Reading<Roster> Of(DealRequest request)
    {
        var roster = request.Roster;
        if (request.Replaces is { } replaced && Fault(request, replaced) is { } fault)
            return new(null, [fault]);
        List<Student> sit = [.. roster.Students.Except(Excused(request))];
        return sit.Count > 0
            ? new(
                roster with
                {
                    Students = sit,
                    Arrangements = roster.Arrangements.ToDictionary(one => one.Key, one => one.Value.In(request.Set.Id, request.Set.Title)),
                },
                []
            )
            : new(
                null,
                [
                    new(
                        request.Set.Source,
                        null,
                        "Everybody on the roster is excused from it",
                        "Take it out of the column `excused from` of those who are to do it."
                    ),
                ]
            );
    }

    /// <summary>Those of the roster who need not do it. Who holds a workbook keeps it.</summary>
    public static IReadOnlyList<Student> Excused(DealRequest request) =>
        [
            .. request
                .Roster.Students.ExceptBy(Held(request), student => student.Id)
                .Where(student =>
                    request.Roster.ArrangementOf(student.Id).ExcusedFrom is var from
                    && (from.Contains(request.Set.Id) || from.Contains(request.Set.Title))
                ),
        ];

    /// <summary>What makes a resit another deal than the one that it replaces, beside how sets are chosen.</summary>
    public static string Choice(DealRequest request) =>
        request.Replaces?.Identity is { } replaced ? $"{request.Wish.Choice}; resit of {replaced.Digest}" : request.Wish.Choice;

    /// <summary>Those who would have no exercise left.</summary>
    public static IReadOnlyList<Diagnostic> WithoutAny(
        DealRequest request,
        Roster roster,
        IReadOnlyList<Exercise> exercises,
        DealSettings settings
    ) =>
        [
            .. roster
                .Students.ExceptBy(Held(request), student => student.Id)
                .Where(student =>
                    !exercises.Any(exercise =>
                        settings.Gives(student, exercise) && !roster.ArrangementOf(student.Id).LeavesOut.Contains(exercise.Id)
                    )
                )
                .Select(student => new Diagnostic(
                    request.Set.Source,
                    null,
                    $"`{student.Id}` leaves out every exercise of the set",
                    "Leave one in, or excuse the student in the column `excused from`."
                )),
        ];

    private static IEnumerable<string> Held(DealRequest request) => request.Earlier.Dealt?.Students.Select(student => student.Who.Id) ?? [];

    private static Diagnostic? Fault(DealRequest request, DealtClass replaced) =>
        replaced.Identity is null
            ? new(request.Set.Source, null, "What is to be sat again was dealt before deals had codes", "Deal it as work of its own.")
        : (replaced.Lesson, replaced.Cohort) != (request.Set.Id, request.Roster.Cohort)
            ? new(
                request.Set.Source,
                null,
                $"What is to be sat again is `{replaced.Lesson}` of “{replaced.Cohort}”, and this is `{request.Set.Id}` of “{request.Roster.Cohort}”",
                "Name the folder of the deal that those of this class sat before."
            )
        : null;
}
