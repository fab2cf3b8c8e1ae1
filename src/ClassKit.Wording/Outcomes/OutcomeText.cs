using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.Wording.Outcomes;

/// <summary>
/// Outcomes in plain words, the same on pages and in workbooks. Files for programs hold <see cref="OutcomeWords"/> instead.
/// </summary>
public static class OutcomeText
{
    /// <summary>The order in which charts, tables and workbooks show outcomes: from understood to not known.</summary>
    public static IReadOnlyList<Outcome> Order { get; } =
    [
        Outcome.Sound,
        Outcome.FollowThrough,
        Outcome.ValueOnly,
        Outcome.Misconception,
        Outcome.Incorrect,
        Outcome.Unreadable,
        Outcome.Blank,
        Outcome.Unsupported,
    ];

    /// <summary>Two or three words for a table's head, a chart's key or a badge.</summary>
    public static string Brief(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => "Right",
            Outcome.ValueOnly => "Number only",
            Outcome.FollowThrough => "Followed through",
            Outcome.Misconception => "Known wrong turn",
            Outcome.Incorrect => "Not right",
            Outcome.Blank => "No answer",
            Outcome.Unreadable => "Not readable",
            Outcome.Unsupported => "For the instructor",
        };

    /// <summary>What an outcome means, to the student.</summary>
    public static string ToStudent(Outcome outcome, bool formulaAsked) =>
        outcome switch
        {
            Outcome.Sound => "Right",
            Outcome.ValueOnly when !formulaAsked => "Right",
            Outcome.ValueOnly => "Right number, without a formula that makes it",
            Outcome.FollowThrough => "Right method, carried on from your own earlier answer",
            Outcome.Misconception => "Not right: a wrong turn that we know",
            Outcome.Incorrect => "Not right yet",
            Outcome.Blank => "No answer given",
            Outcome.Unreadable => "Could not be read as a number",
            Outcome.Unsupported => "Left to your instructor, and not counted",
        };

    /// <summary>What an outcome of a part means, to the student.</summary>
    public static string ToStudent(Outcome outcome, Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return (outcome, part.Choice) switch
        {
            (Outcome.Unsupported, _) when part.InWords is not null => "Your instructor reads this",
            (Outcome.Unreadable, not null) => "Could not be read as one of the letters",
            (Outcome.FollowThrough, not null) => "Follows from your own earlier answer",
            _ => ToStudent(outcome, part.FormulaAsked),
        };
    }

    /// <summary>What became of an answer, to the student: a right method that was rounded is not called wrong over words that say it is right.</summary>
    public static string ToStudent(AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return (answer.Outcome, answer.Findings) switch
        {
            (Outcome.Incorrect, [AnswerFinding.RoundsAnswer, ..]) => "Right method, rounded further than the part allows",
            (Outcome.Incorrect, [AnswerFinding.RoundsEarlier or AnswerFinding.RoundsWithin, ..]) => "Right method, rounded on the way",
            (Outcome.Incorrect, [AnswerFinding.TypedRounded or AnswerFinding.TypedFromRounded, ..]) => "Right but for rounding",
            _ => ToStudent(answer.Outcome, answer.Part),
        };
    }

    /// <summary>What an outcome means, to the instructor.</summary>
    public static string Meaning(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound =>
                "A formula that gives the right number here and on every fresh set of inputs, or a right number where no formula was asked",
            Outcome.ValueOnly => "The right number, but typed, or from a formula that fails on fresh inputs",
            Outcome.FollowThrough => "The right method, applied to an earlier wrong answer of the student’s own",
            Outcome.Misconception => "Behaves like a wrong method that the exercise knows by name",
            Outcome.Incorrect => "A number or an error that nothing else explains",
            Outcome.Blank => "Nothing was entered",
            Outcome.Unreadable => "A text that is no number, or no letter of the list",
            Outcome.Unsupported =>
                "A formula that ClassKit cannot evaluate, a letter among words, or an answer in own words: not counted until you have looked at it",
        };

    /// <summary>The outcome as it is shown: where no formula was asked, a right number is simply right.</summary>
    public static Outcome Shown(Outcome outcome, Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return outcome == Outcome.ValueOnly && !part.FormulaAsked ? Outcome.Sound : outcome;
    }

    /// <summary>
    /// The outcome of an answer as it is shown: what the instructor has marked waits for nobody any more, and is right where it got all
    /// points.
    /// </summary>
    public static Outcome Shown(AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer is { Outcome: Outcome.Unsupported, IsUndecided: false }
            ? answer.ShowsMethod
                ? Outcome.Sound
                : Outcome.Incorrect
            : Shown(answer.Outcome, answer.Part);
    }

    /// <summary>How many answers to a part had each outcome, as they are shown.</summary>
    public static IReadOnlyDictionary<Outcome, int> ShownCounts(PartSummary summary)
    {
        ArgumentNullException.ThrowIfNull(summary);
        return Order.ToDictionary(
            outcome => outcome,
            outcome =>
                summary.Counts.Where(count => Shown(count.Key, summary.Part) == outcome).Sum(count => count.Value)
                + outcome switch
                {
                    Outcome.Sound => summary.MarkedInFull,
                    Outcome.Incorrect => summary.Marked - summary.MarkedInFull,
                    Outcome.Unsupported => -summary.Marked,
                    _ => 0,
                }
        );
    }

    /// <summary>
    /// True where something was entered and is wrong; a blank is no slip, and what is left to the instructor is none yet.
    /// </summary>
    public static bool IsSlip(Outcome outcome) =>
        outcome switch
        {
            Outcome.Misconception or Outcome.Incorrect or Outcome.Unreadable => true,
            Outcome.Sound or Outcome.ValueOnly or Outcome.FollowThrough or Outcome.Blank or Outcome.Unsupported => false,
        };
}
