using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.UseCases.Dealing;

/// <summary>What an instructor may want to do about how a moment was found that they named.</summary>
internal static class DueRemedies
{
    public static IReadOnlyList<Remedy> Of(DueMoment? due) => due is { Reading: DueReading.ZoneAssumed } ? [Remedy.NameClassProfile] : [];
}
