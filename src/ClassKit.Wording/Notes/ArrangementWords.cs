using ClassKit.Exercises.Dealing;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Notes;

/// <summary>What was arranged with a student.</summary>
internal static class ArrangementWords
{
    /// <summary>The name and what it is: <c>Ana Lima (large print, 25 % more time)</c>.</summary>
    public static string Of(DealtStudent student) => $"{student.Who.Shown} ({string.Join(", ", Pieces(student))})";

    private static IEnumerable<string> Pieces(DealtStudent student)
    {
        if (student.LargePrint) yield return "large print";
        if (student.ExtraTime > 0) yield return $"{Percent.Of(student.ExtraTime)} more time";
        if (student.Due is { } due) yield return $"due {due.Words}";
    }
}
