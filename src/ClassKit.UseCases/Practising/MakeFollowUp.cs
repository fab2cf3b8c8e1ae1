using ClassKit.Content.Banks;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.FollowUps;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Cohorts;

namespace ClassKit.UseCases.Practising;

/// <summary>Makes each student practice aimed at what they missed.</summary>
public static class MakeFollowUp
{
    /// <summary>The kind of folder that its files go into; see <see cref="FollowUpFiles"/>.</summary>
    public const string Kind = "follow-up";

    /// <summary>How long it takes when nothing is said.</summary>
    public const int DefaultMinutes = 30;

    /// <summary>Chooses for everyone and draws fresh numbers.</summary>
    /// <returns>The practice, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<FollowUpMade> Run(FollowUpRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.DrawingVariants);
        var (before, wish) = (request.Before, request.Wish);
        List<string> ids = [.. before.Students.Select(student => student.Who.Id)];
        if (wish.Students.Except(ids).ToList() is { Count: > 0 } strangers)
            return new(
                null,
                [
                    .. strangers.Select(id => new Diagnostic(
                        request.Source,
                        null,
                        $"Nobody in {ClassName.InSentence(before.Cohort)} has the id `{id}`",
                        ExerciseBank.Advice(id, ids)
                    )),
                ]
            );
        var records = request.Grades.Students.ToDictionary(record => record.Who.Id);
        var wanted = before
            .Students.Where(student => wish.Students.Count == 0 || wish.Students.Contains(student.Who.Id))
            .Select(student => student.Who)
            .ToList();
        var chosen = wanted.ToDictionary(
            student => student.Id,
            student =>
                records.TryGetValue(student.Id, out var record) ? FollowUpChooser.Choose(before, record, request.Pool, wish.Minutes) : []
        );
        var practising = wanted.FindAll(student => chosen[student.Id].Count > 0);
        if (practising.Count == 0)
            return new(
                null,
                [
                    new(
                        request.Source,
                        null,
                        "Nobody lost a point on work that came back",
                        "There is nothing to follow up; practice of any kind can be made without grades."
                    )
                    {
                        Remedy = Remedy.MakePractice,
                    },
                ]
            );

        var used = chosen.Values.SelectMany(list => list).Select(one => one.Exercise.Id).ToHashSet();
        var exercises = request
            .Pool.UnionBy(before.Exercises, exercise => exercise.Id)
            .Where(exercise => used.Contains(exercise.Id))
            .OrderBy(exercise => exercise.Skill, StringComparer.Ordinal)
            .ThenBy(exercise => exercise.Level)
            .ToList();
        if (PracticeLayout.FirstNameClash(exercises) is { } clash)
            return new(null, [PracticeSet.Clash(request.Source, clash)]);
        var result = Dealer.Deal(
            $"{before.Lesson}-follow-up",
            FollowUpTitle.Of(before.LessonTitle),
            exercises,
            before.Marking,
            new(before.Cohort, practising)
            {
                TimeZone = before.TimeZone,
                Paper = before.Paper,
                Arrangements = Arranged(before),
            },
            wish.Seed,
            new(DealPurpose.FollowUp, NumbersToAvoid.OfEach(before))
            {
                Choice = $"after {before.Identity?.Digest}",
                Sets = practising.ToDictionary(
                    student => student.Id,
                    student => (IReadOnlyList<string>)[.. chosen[student.Id].Select(one => one.Exercise.Id)]
                ),
            },
            run.Draws()
        );
        if (result.Class is not { } dealt)
            return new(null, PracticeSet.Undealt(request.Source, result));
        return request.Earlier.RefusalOf(dealt) is { } refusal ? new(null, [refusal]) : new(new(request, dealt, chosen), []);
    }

    /// <summary>Print and time are as they were; practice is due at no moment.</summary>
    private static Dictionary<string, Arrangement> Arranged(DealtClass before) =>
        before
            .Students.Where(student => student.LargePrint || student.ExtraTime > 0)
            .ToDictionary(student => student.Who.Id, student => new Arrangement(student.LargePrint, student.ExtraTime, null));
}
