using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor is told where a class is not judged as it was on record.</summary>
internal static class JudgeWords
{
    /// <summary>A line for everything that decides answers and differs.</summary>
    /// <param name="recorded">What decided the grades on record; null if they do not say.</param>
    /// <param name="now">The grades of today.</param>
    public static IEnumerable<string> Differences(JudgeRecord? recorded, ClassGrades now)
    {
        if (recorded is null)
        {
            yield return "The grades on record do not say how they were judged, so answers are judged as they are today, on fresh inputs of the deal's seed.";
            yield break;
        }

        if (recorded.Version != JudgeRecord.CurrentVersion)
            yield return $"The grades on record were judged by version {recorded.Version} of the judge; this is version {JudgeRecord.CurrentVersion}. Where an outcome changes without another reason, that is why.";
        var pools = recorded.Pools.ToDictionary(pool => pool.Exercise);
        foreach (var pool in now.Judging?.Pools ?? [])
        {
            if (!pools.TryGetValue(pool.Exercise, out var before) || !IsSame(before, pool))
                yield return $"{now.Dealt.Exercises.Single(exercise => exercise.Id == pool.Exercise).Title}: the fresh inputs on record do not fit the exercise as it is now, so others were drawn.";
        }
    }

    /// <summary>The same for grading again without comparing everything: besides, whose very same file is judged otherwise.</summary>
    public static IEnumerable<string> Again(GradeResult graded)
    {
        if (graded.Unread.Count > 0)
            yield return $"The earlier grades are not gone by, so that answers are judged anew and nothing is known from them of when work was due: {string.Join(" ", graded.Unread)}";
        if (graded.Earlier is not { } earlier) yield break;
        var differences = Differences(earlier.Judging, graded.Grades).ToList();
        foreach (var line in differences) yield return line;
        if (differences.Count == 0) yield break;
        foreach (var line in ChangeWords.Of(GradeComparison.OfSameFiles(earlier, graded.Grades))) yield return line;
    }

    private static bool IsSame(JudgeRecord.Pool one, JudgeRecord.Pool other) =>
        one.Inputs.Count == other.Inputs.Count && one.Inputs.Zip(other.Inputs).All(pair => pair.First.Count == pair.Second.Count && pair.First.All(given => pair.Second.TryGetValue(given.Key, out var value) && value == given.Value));
}
