using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Identity;

namespace ClassKit.Exercises.Dealing;

/// <summary>What makes a deal that is wanted another one than a deal that students hold.</summary>
public static class DealDifferences
{
    /// <summary>Every difference; none if the deal can be made again or added to.</summary>
    /// <param name="held">What students hold.</param>
    /// <param name="wanted">What is to be dealt, of which the students are left out.</param>
    /// <param name="roster">Whom it is to be dealt to.</param>
    public static IReadOnlyList<DealDifference> Between(DealtClass held, DealtClass wanted, Roster roster)
    {
        ArgumentNullException.ThrowIfNull(held);
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(roster);
        List<DealDifference> differences = held.Identity is null
            ? [new DealDifference.WithoutCode()]
            : [.. Facts(held, wanted), .. Exercises(held.Exercises, wanted.Exercises)];
        if (differences.Count == 0 && held.Identity != wanted.Identity)
            differences.Add(new DealDifference.Choice());
        if (held.Marking != wanted.Marking)
            differences.Add(new DealDifference.Marking());
        differences.AddRange(Students(held, roster));
        return differences;
    }

    private static IEnumerable<DealDifference> Facts(DealtClass held, DealtClass wanted)
    {
        if (held.Lesson != wanted.Lesson)
            yield return new DealDifference.Lesson(held.Lesson, wanted.Lesson);
        if (held.LessonTitle != wanted.LessonTitle)
            yield return new DealDifference.Title(held.LessonTitle, wanted.LessonTitle);
        if (held.Cohort != wanted.Cohort)
            yield return new DealDifference.Cohort(held.Cohort, wanted.Cohort);
        if (held.Seed != wanted.Seed)
            yield return new DealDifference.Seed(held.Seed, wanted.Seed);
        if (held.Plan != wanted.Plan)
            yield return new DealDifference.Layout();
        if (held.Purpose != wanted.Purpose)
            yield return new DealDifference.Purpose();
        if (held.Due?.At.UtcDateTime != wanted.Due?.At.UtcDateTime)
            yield return new DealDifference.Due(held.Due, wanted.Due);
    }

    private static IEnumerable<DealDifference> Exercises(IReadOnlyList<Exercise> held, IReadOnlyList<Exercise> wanted)
    {
        var (before, now) = (held.ToDictionary(exercise => exercise.Id), wanted.ToDictionary(exercise => exercise.Id));
        var gone = before.Keys.Except(now.Keys).ToList();
        var come = now.Keys.Except(before.Keys).ToList();
        var changed = now.Where(exercise =>
                before.TryGetValue(exercise.Key, out var old) && DealDigest.Of(old) != DealDigest.Of(exercise.Value)
            )
            .Select(exercise => exercise.Key)
            .ToList();
        if (gone.Count > 0)
            yield return new DealDifference.Removed(gone);
        if (come.Count > 0)
            yield return new DealDifference.Added(come);
        if (changed.Count > 0)
            yield return new DealDifference.Changed(changed);
        if (gone.Count + come.Count == 0 && !held.Select(exercise => exercise.Id).SequenceEqual(wanted.Select(exercise => exercise.Id)))
            yield return new DealDifference.Order();
    }

    private static IEnumerable<DealDifference> Students(DealtClass held, Roster roster)
    {
        var now = roster.Students.ToDictionary(student => student.Id);
        var gone = held.Students.Where(student => !now.ContainsKey(student.Who.Id)).Select(student => student.Who.Id).ToList();
        if (gone.Count > 0)
            yield return new DealDifference.StudentsGone(gone);
        foreach (var student in held.Students)
        {
            if (now.TryGetValue(student.Who.Id, out var other) && other.Name != student.Who.Name)
                yield return new DealDifference.Renamed(other.Id, student.Who.Name, other.Name);
        }
    }
}
