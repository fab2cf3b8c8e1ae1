using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Dealing;

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

        if (moment is not null) yield return DueWords.Of(moment);
        if (recorded is not null && moment?.At.UtcDateTime != recorded.At.UtcDateTime)
            yield return $"{(deadline.IsAsDealt ? "As dealt" : "On record")} it was due {recorded}; from now on {(moment is null ? "it may come at any time" : $"it is due {moment}")}.";
    }

    public static IReadOnlyList<Remedy> Remedies(SettledDeadline deadline) => deadline.IsNamed ? DueWords.Remedies(deadline.Moment) : [];
}
