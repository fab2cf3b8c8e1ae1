using ClassKit.Grading.Results;

namespace ClassKit.Pages.Charts;

/// <summary>
/// How charts fill an outcome's share: a tint of its own, told from its neighbours by lightness; without colour a pattern, see
/// <c>OutcomePatterns.razor</c>.
/// </summary>
internal static class OutcomeFill
{
    /// <summary>The class of a share's rectangle.</summary>
    public static string Class(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => "seg fill-accent",
            Outcome.Blank => "seg fill-paper",
            Outcome.ValueOnly
            or Outcome.FollowThrough
            or Outcome.Misconception
            or Outcome.Incorrect
            or Outcome.Unreadable
            or Outcome.Unsupported => $"seg share-{OutcomeWords.Of(outcome)}",
        };

    /// <summary>The pattern over it where a printer has no colour, on which a number needs a plate; null for none.</summary>
    public static string? Pattern(Outcome outcome) =>
        outcome is Outcome.Sound or Outcome.Blank ? null : $"url(#fill-{OutcomeWords.Of(outcome)})";
}
