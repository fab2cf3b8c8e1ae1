using ClassKit.Grading.Results;

namespace ClassKit.Wording.Outcomes;

/// <summary>Which outcome has which colour.</summary>
public static class OutcomeTones
{
    /// <summary>The tone of an outcome.</summary>
    public static OutcomeTone Of(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => OutcomeTone.Good,
            Outcome.FollowThrough or Outcome.ValueOnly => OutcomeTone.Info,
            Outcome.Misconception => OutcomeTone.Warn,
            Outcome.Incorrect or Outcome.Unreadable => OutcomeTone.Bad,
            Outcome.Blank => OutcomeTone.Shade,
            Outcome.Unsupported => OutcomeTone.Accent,
        };

    /// <summary>What style sheets call a tone.</summary>
    public static string Name(OutcomeTone tone) =>
        tone switch
        {
            OutcomeTone.Good => "good",
            OutcomeTone.Info => "info",
            OutcomeTone.Warn => "warn",
            OutcomeTone.Bad => "bad",
            OutcomeTone.Shade => "shade",
            OutcomeTone.Accent => "accent",
        };

    /// <summary>The ground on which dark text stands, in hexadecimal sRGB: the surface of that tone on a light page.</summary>
    public static string Ground(OutcomeTone tone) =>
        tone switch
        {
            OutcomeTone.Good => "#e7f2ea",
            OutcomeTone.Info => "#e9eff9",
            OutcomeTone.Warn => "#f9f0df",
            OutcomeTone.Bad => "#faebe9",
            OutcomeTone.Shade => "#f3f0e7",
            OutcomeTone.Accent => "#e8f0ef",
        };
}
