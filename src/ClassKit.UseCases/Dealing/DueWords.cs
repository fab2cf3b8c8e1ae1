using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.UseCases.Dealing;

/// <summary>What an instructor is told of how a moment was found that they named.</summary>
internal static class DueWords
{
    /// <summary>The moment, and what had to be decided to find it.</summary>
    public static string Of(DueMoment due) => due.Reading switch
    {
        DueReading.Plain => $"Due {due}.",
        DueReading.ZoneAssumed => $"Due {due}: nobody has said in which time zone the class is, so UTC was taken. Write `time zone: Europe/Paris` or the like into the class profile.",
        DueReading.Skipped => $"Due {due}: the clocks of {due.Zone} are put forward over the time that you named, so it was moved on by as much.",
        DueReading.Twice => $"Due {due}, offset {due.At:zzz}: the clocks of {due.Zone} are put back over the time that you named, so it comes twice, and the later one was taken.",
    };

    /// <summary>What the instructor may want to do about it.</summary>
    public static IReadOnlyList<Remedy> Remedies(DueMoment? due) => due is { Reading: DueReading.ZoneAssumed } ? [Remedy.NameClassProfile] : [];
}
