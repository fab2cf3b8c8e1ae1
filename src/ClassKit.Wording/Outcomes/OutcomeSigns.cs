using ClassKit.Grading.Results;

namespace ClassKit.Wording.Outcomes;

/// <summary>
/// The sign of each outcome, told apart by shape and not by colour: drawn on pages, a character in workbooks, of the same shape in both. A
/// word always stands beside it.
/// </summary>
public static class OutcomeSigns
{
    /// <summary>The character.</summary>
    public static string Character(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => "✓",
            Outcome.FollowThrough => "↳",
            Outcome.ValueOnly => "#",
            Outcome.Misconception => "△",
            Outcome.Incorrect => "✗",
            Outcome.Unreadable => "?",
            Outcome.Blank => "○",
            Outcome.Unsupported => "◉",
        };

    /// <summary>The lines of the drawing in a box of 16 by 16, as a path of SVG.</summary>
    public static string Path(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => "M2.5 8.5 6.3 12.3 13.5 4",
            Outcome.FollowThrough => "M2.5 3v4.2a3 3 0 0 0 3 3h8M10.3 6.9l3.3 3.3-3.3 3.3",
            Outcome.ValueOnly => "M6.2 2.5 4.6 13.5M11.4 2.5 9.8 13.5M2.6 6h11.2M2.2 10h11.2",
            Outcome.Misconception => "M8 2.8 14.2 13.2H1.8z",
            Outcome.Incorrect => "M3.5 3.5l9 9M12.5 3.5l-9 9",
            Outcome.Unreadable => "M5 5.6a3 3 0 1 1 4.3 2.7C8.4 8.8 8 9.3 8 10.3M8 12.9v.7",
            Outcome.Blank => "M8 2.5a5.5 5.5 0 1 1 0 11 5.5 5.5 0 0 1 0-11z",
            Outcome.Unsupported =>
                "M1.5 8S4 3.8 8 3.8 14.5 8 14.5 8 12 12.2 8 12.2 1.5 8 1.5 8zM8 6.3a1.7 1.7 0 1 1 0 3.4 1.7 1.7 0 0 1 0-3.4z",
        };
}
