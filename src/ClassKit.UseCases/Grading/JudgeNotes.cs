using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;
using ClassKit.Notes;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor should know where a class is not judged as it was on record.</summary>
internal static class JudgeNotes
{
    /// <summary>A note for everything that decides answers and differs.</summary>
    /// <param name="recorded">What decided the grades on record; null if they do not say.</param>
    /// <param name="now">The grades of today.</param>
    public static IEnumerable<Note> Differences(JudgeRecord? recorded, ClassGrades now)
    {
        if (recorded is null)
        {
            yield return new Note.JudgingNotKnown();
            yield break;
        }
        if (recorded.Version != JudgeRecord.CurrentVersion)
            yield return new Note.OtherJudge(recorded.Version, JudgeRecord.CurrentVersion);
        var pools = recorded.Pools.ToDictionary(pool => pool.Exercise);
        foreach (var pool in now.Judging?.Pools ?? [])
        {
            if (!pools.TryGetValue(pool.Exercise, out var before) || !IsSame(before, pool))
                yield return new Note.OtherInputs(now.Dealt.Exercises.Single(exercise => exercise.Id == pool.Exercise));
        }
    }

    /// <summary>The same for grading again without comparing everything: besides, whose very same file is judged otherwise.</summary>
    public static IEnumerable<Note> Again(GradeResult graded)
    {
        if (graded.Unread.Count > 0)
            yield return new Note.NotGoneBy([.. graded.Unread.Select(problem => problem.ToString())]);
        if (graded.Earlier is not { } earlier)
            yield break;
        var differences = Differences(earlier.Judging, graded.Grades).ToList();
        foreach (var note in differences)
            yield return note;
        if (differences.Count == 0)
            yield break;
        foreach (var change in GradeComparison.OfSameFiles(earlier, graded.Grades))
            yield return new Note.Changed(change);
    }

    private static bool IsSame(JudgeRecord.Pool one, JudgeRecord.Pool other) =>
        one.Inputs.Count == other.Inputs.Count
        && one.Inputs.Zip(other.Inputs)
            .All(pair =>
                pair.First.Count == pair.Second.Count
                && pair.First.All(given => pair.Second.TryGetValue(given.Key, out var value) && value == given.Value)
            );
}
