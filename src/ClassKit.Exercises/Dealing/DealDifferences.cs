using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Identity;

namespace ClassKit.Exercises.Dealing;

/// <summary>What makes a deal that is wanted another one than a deal that students hold.</summary>
public static class DealDifferences
{
    /// <summary>Every difference as a short clause; none if the deal can be made again or added to.</summary>
    /// <param name="held">What students hold.</param>
    /// <param name="wanted">What is to be dealt, of which the students are left out.</param>
    /// <param name="roster">Whom it is to be dealt to.</param>
    public static IReadOnlyList<string> Between(DealtClass held, DealtClass wanted, Roster roster)
    {
        ArgumentNullException.ThrowIfNull(held);
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(roster);
        List<string> differences = held.Identity is null
            ? ["it was dealt before deals had codes"]
            : [.. Facts(held, wanted), .. Exercises(held.Exercises, wanted.Exercises)];
        if (differences.Count == 0 && held.Identity != wanted.Identity) differences.Add("sets of exercises are chosen in another way");
        if (held.Marking != wanted.Marking) differences.Add("the marking scheme has changed");
        differences.AddRange(Students(held, roster));
        return differences;
    }

    private static IEnumerable<string> Facts(DealtClass held, DealtClass wanted)
    {
        if (held.Lesson != wanted.Lesson) yield return $"the lesson is {wanted.Lesson}, and was {held.Lesson}";
        if (held.LessonTitle != wanted.LessonTitle) yield return $"its title is “{wanted.LessonTitle}”, and was “{held.LessonTitle}”";
        if (held.Cohort != wanted.Cohort) yield return $"the class is “{wanted.Cohort}”, and was “{held.Cohort}”";
        if (held.Seed != wanted.Seed) yield return string.Create(CultureInfo.InvariantCulture, $"the seed is {wanted.Seed}, and was {held.Seed}");
        if (held.Plan != wanted.Plan) yield return "sheets are laid out in another way";
        if (held.Purpose != wanted.Purpose) yield return "it is for another purpose";
        if (held.Due?.At.UtcDateTime != wanted.Due?.At.UtcDateTime)
            yield return $"it is {(wanted.Due is { } due ? $"due {due.Words}" : "to come at any time")}, and was {(held.Due is { } was ? $"due {was.Words}" : "to come at any time")} (another moment can be named when it is graded)";
    }

    private static IEnumerable<string> Exercises(IReadOnlyList<Exercise> held, IReadOnlyList<Exercise> wanted)
    {
        var (before, now) = (held.ToDictionary(exercise => exercise.Id), wanted.ToDictionary(exercise => exercise.Id));
        var gone = before.Keys.Except(now.Keys).ToList();
        var come = now.Keys.Except(before.Keys).ToList();
        var changed = now.Where(exercise => before.TryGetValue(exercise.Key, out var old) && DealDigest.Of(old) != DealDigest.Of(exercise.Value)).Select(exercise => exercise.Key).ToList();
        if (gone.Count > 0) yield return $"without {string.Join(", ", gone)}";
        if (come.Count > 0) yield return $"with {string.Join(", ", come)} besides";
        if (changed.Count > 0) yield return $"{string.Join(", ", changed)} {(changed.Count == 1 ? "has" : "have")} been changed since";
        if (gone.Count + come.Count == 0 && !held.Select(exercise => exercise.Id).SequenceEqual(wanted.Select(exercise => exercise.Id))) yield return "exercises are in another order";
    }

    private static IEnumerable<string> Students(DealtClass held, Roster roster)
    {
        var now = roster.Students.ToDictionary(student => student.Id);
        var gone = held.Students.Where(student => !now.ContainsKey(student.Who.Id)).Select(student => student.Who.Id).ToList();
        if (gone.Count > 0) yield return $"the roster lacks {string.Join(", ", gone)}";
        foreach (var student in held.Students)
        {
            if (now.TryGetValue(student.Who.Id, out var other) && other.Name != student.Who.Name)
                yield return $"{other.Id} is called {other.Name}, and was called {student.Who.Name}";
        }
    }
}
