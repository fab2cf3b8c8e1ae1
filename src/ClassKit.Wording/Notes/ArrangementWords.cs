using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Notes;

/// <summary>What was arranged with a student.</summary>
public static class ArrangementWords
{
    /// <summary>The name and what it is: <c>Ana Lima (large print, 25 % more time)</c>.</summary>
    internal static string Of(DealtStudent student) => $"{student.Who.Shown} ({string.Join(", ", Pieces(student.LargePrint, student.ExtraTime, student.Due?.Words))})";

    /// <summary>What the class's list says of a student: <c>large print, 25 % more time</c>.</summary>
    public static string Of(Arrangement arranged)
    {
        ArgumentNullException.ThrowIfNull(arranged);
        return string.Join(", ", Pieces(arranged.LargePrint, arranged.ExtraTime, arranged.Due is null ? null : "on a day of their own"));
    }

    private static IEnumerable<string> Pieces(bool largePrint, decimal extraTime, string? due)
    {
        if (largePrint) yield return "large print";
        if (extraTime > 0) yield return $"{Percent.Of(extraTime)} more time";
        if (due is not null) yield return $"due {due}";
    }
}
