using ClassKit.Grading.Results;

namespace ClassKit.Pages.Charts;

/// <summary>How charts fill an outcome's share; see <c>OutcomePatterns.razor</c>.</summary>
internal static class OutcomeFill
{
    /// <summary>What to give as <c>fill</c>; null where a class says it.</summary>
    public static string? Of(Outcome outcome) =>
        outcome is Outcome.Sound or Outcome.Blank ? null : $"url(#fill-{OutcomeWords.Of(outcome)})";

    /// <summary>The class of a share's rectangle.</summary>
    public static string Class(Outcome outcome) => outcome switch
    {
        Outcome.Sound => "seg fill-accent",
        Outcome.Blank => "seg fill-paper",
        Outcome.ValueOnly or Outcome.FollowThrough or Outcome.Misconception or Outcome.Incorrect
            or Outcome.Unreadable or Outcome.Unsupported => "seg",
    };

    /// <summary>True where text can stand on the fill itself; elsewhere it needs a plate.</summary>
    public static bool IsPlain(Outcome outcome) => outcome is Outcome.Sound or Outcome.Blank;
}
