using ClassKit.Exercises.Authoring;

namespace ClassKit.Pages.Keys;

/// <summary>What the heads and the rows of an exercise's tables agree on.</summary>
internal static class KeyRow
{
    /// <summary>The givens that differ from student to student, each a column.</summary>
    public static IEnumerable<Given> Drawn(Exercise exercise) => exercise.Givens.Where(given => !given.IsConstant);

    /// <summary>A part's number and letter.</summary>
    public static string Label(int exercise, int part) => $"{exercise}{Phrases.Letter(part)}";
}
