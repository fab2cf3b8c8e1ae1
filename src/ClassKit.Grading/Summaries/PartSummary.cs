using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Summaries;

/// <summary>How a class did on one part.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Part">The part.</param>
/// <param name="Counts">How many graded students had each outcome; every outcome is a key.</param>
/// <param name="Misconceptions">The misconceptions met and how many students met them, most first.</param>
public sealed record PartSummary(
    Exercise Exercise,
    Part Part,
    IReadOnlyDictionary<Outcome, int> Counts,
    IReadOnlyList<(Misconception Misconception, int Students)> Misconceptions
)
{
    /// <summary>
    /// How many answers that only the instructor can judge the instructor has marked; they are counted as
    /// <see cref="Outcome.Unsupported"/>.
    /// </summary>
    public int Marked { get; init; }

    /// <summary>How many of these got all points.</summary>
    public int MarkedInFull { get; init; }

    /// <summary>Of how many wrong answers can be said what happened.</summary>
    public int Explained { get; init; }

    /// <summary>How many formulas are right but for what they round.</summary>
    public int Rounded { get; init; }

    /// <summary>
    /// The share of judged answers whose method is understood, those that round on the way among them, 0 to 1; null if nobody was judged.
    /// What has to be taught again is the method, and who rounds has it.
    /// </summary>
    public decimal? MethodShare => Judged == 0 ? null : (decimal)(Understood + Rounded) / Judged;

    /// <summary>How many graded students were asked the part.</summary>
    public int Asked => Counts.Values.Sum();

    /// <summary>
    /// How many answers were judged: all but unsupported ones, and none where words are asked, of which a blank alone would say too much.
    /// </summary>
    public int Judged => Part.InWords is null ? Asked - Counts[Outcome.Unsupported] : 0;

    /// <summary>
    /// How many show that the method is understood: sound, or followed through, or a right number where no formula was asked.
    /// </summary>
    public int Understood => Counts[Outcome.Sound] + Counts[Outcome.FollowThrough] + (Part.FormulaAsked ? 0 : Counts[Outcome.ValueOnly]);

    /// <summary>How many entered something that is wrong, known or not; what was marked by hand is not counted.</summary>
    public int Wrong => Counts[Outcome.Misconception] + Counts[Outcome.Incorrect] + Counts[Outcome.Unreadable];

    /// <summary>The share of judged answers with the right number, by formula or typed, 0 to 1; null if nobody was judged.</summary>
    public decimal? RightShare => Judged == 0 ? null : (decimal)(Counts[Outcome.Sound] + Counts[Outcome.ValueOnly]) / Judged;

    /// <summary>The share of judged answers whose method is understood, 0 to 1; null if nobody was judged.</summary>
    public decimal? UnderstoodShare => Judged == 0 ? null : (decimal)Understood / Judged;
}
