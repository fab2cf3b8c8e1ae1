using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Notes;

/// <summary>What was arranged with a student.</summary>
public static class ArrangementWords
{
    /// <summary>The name and what it is in one deal: <c>Ana Lima (large print, 25 % more time)</c>.</summary>
    internal static string Of(DealtStudent student) =>
        $"{student.Who.Shown} ({string.Join(", ", [.. Pieces(student.LargePrint, student.ExtraTime, student.Due?.Words), .. student.LeavesOut.Select(Without)])})";

    /// <summary>What the class's list says of a student: <c>large print, 25 % more time</c>.</summary>
    public static string Of(Arrangement arranged)
    {
        ArgumentNullException.ThrowIfNull(arranged);
        return string.Join(", ", Pieces(arranged, _ => "on a day of their own"));
    }

    /// <summary>The same, a clause each, with the moment on the class's clocks.</summary>
    /// <param name="arranged">As the class's list has it.</param>
    /// <param name="zone">Where the clocks are; null if nobody has said.</param>
    public static IEnumerable<string> Each(Arrangement arranged, ClassTimeZone? zone)
    {
        ArgumentNullException.ThrowIfNull(arranged);
        return Pieces(arranged, due => due.In(zone)?.Words);
    }

    private static IEnumerable<string> Pieces(Arrangement arranged, Func<DueWish, string?> due) =>
        [
            .. Pieces(arranged.LargePrint, arranged.ExtraTime, arranged.Due is { } when ? due(when) : null),
            .. arranged.OnlyFor.Select(one => Alone(one, due)),
            .. arranged.LeavesOut.Select(Without),
            .. arranged.ExcusedFrom.Select(work => $"excused from {work}"),
        ];

    private static IEnumerable<string> Pieces(bool largePrint, decimal extraTime, string? due)
    {
        if (largePrint)
            yield return "large print";
        if (extraTime > 0)
            yield return $"{Percent.Of(extraTime)} more time";
        if (due is not null)
            yield return $"due {due}";
    }

    private static string Alone(WorkArrangement one, Func<DueWish, string?> due) =>
        one switch
        {
            { LargePrint: { } large } => $"{(large ? "large print" : "no large print")} for {one.Work}",
            { ExtraTime: { } extra } => $"{(extra > 0 ? $"{Percent.Of(extra)} more time" : "no more time")} for {one.Work}",
            { Due: { } moment } => $"due {due(moment)} for {one.Work}",
            { LeavesOut: { Count: > 0 } left } => $"without {string.Join(", ", left)} in {one.Work}",
            _ => one.Work,
        };

    private static string Without(string exercise) => $"without {exercise}";
}
