using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor is told of when work was due.</summary>
internal static class DeadlineWords
{
    public static IEnumerable<string> Of(SettledDeadline deadline)
    {
        var (moment, recorded) = (deadline.Moment, deadline.OnRecord);
        if (!deadline.IsNamed)
        {
            if (recorded is not null) yield return $"Due {recorded}, {(deadline.IsAsDealt ? "as dealt" : "as on record")}.";
            yield break;
        }

        if (moment is not null) yield return Reading(moment);
        if (recorded is not null && moment?.At.UtcDateTime != recorded.At.UtcDateTime)
            yield return $"{(deadline.IsAsDealt ? "As dealt" : "On record")} it was due {recorded}; from now on {(moment is null ? "it may come at any time" : $"it is due {moment}")}.";
    }

    public static IEnumerable<Remedy> Remedies(SettledDeadline deadline) =>
        deadline is { IsNamed: true, Moment.Reading: DueReading.ZoneAssumed } ? [Remedy.NameClassProfile] : [];

    private static string Reading(DueMoment due) => due.Reading switch
    {
        DueReading.Plain => $"Due {due}.",
        DueReading.ZoneAssumed => $"Due {due}: nobody has said in which time zone the class is, so UTC was taken. Write `time zone: Europe/Paris` or the like into the class profile.",
        DueReading.Skipped => $"Due {due}: the clocks of {due.Zone} are put forward over the time that you named, so it was moved on by as much.",
        DueReading.Twice => $"Due {due}, offset {due.At:zzz}: the clocks of {due.Zone} are put back over the time that you named, so it comes twice, and the later one was taken.",
    };
}
