using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Guarantees;
using ClassKit.Exercises.Randomness;

namespace ClassKit.Exercises.Proving;

/// <summary>How an exercise's draws fare: what is thrown away, why, and how often in a row.</summary>
/// <param name="Draws">How many draws were made.</param>
/// <param name="Kept">How many kept every rule.</param>
/// <param name="LongestRun">The most draws thrown away in a row.</param>
/// <param name="Rejections">Why draws were thrown away, the most frequent reason first, each with its first counter-example.</param>
/// <param name="LeastEffort">The least effort of a variant kept; 0 if none was.</param>
/// <param name="MostEffort">The greatest effort of a variant kept; 0 if none was.</param>
/// <param name="Rules">The rules that every draw was tried by, in that order.</param>
public sealed record RejectionProfile(
    int Draws,
    int Kept,
    int LongestRun,
    IReadOnlyList<Rejection> Rejections,
    int LeastEffort,
    int MostEffort,
    IReadOnlyList<VariantRule> Rules
)
{
    /// <summary>The reason that stops the greatest share of the draws that get as far as to it; null if none was thrown away.</summary>
    /// <remarks>
    /// Draws are tried by one rule after the other, so that a strict rule can hide behind an earlier one that is met more often.
    /// </remarks>
    public (Rejection Rejection, int Reached)? Worst =>
        Rejections
            .Select(rejection =>
                ((Rejection, int Reached)?)
                    (rejection, Draws - Rejections.Where(other => OrderOf(other) < OrderOf(rejection)).Sum(other => other.Count))
            )
            .MaxBy(reason => (double)reason!.Value.Item1.Count / reason.Value.Reached);

    /// <summary>The share of draws that can be dealt, 0 to 1.</summary>
    public double KeptShare => (double)Kept / Draws;

    /// <summary>Draws so often and counts; the same exercise gives the same profile always.</summary>
    public static RejectionProfile Of(VariantGenerator generator, int draws)
    {
        ArgumentNullException.ThrowIfNull(generator);
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        var random = SeededDraws.For(0, "profile", generator.Exercise.Id);
        var tally = new RejectionTally();
        var (kept, run, longest, least, most) = (0, 0, 0, int.MaxValue, 0);
        for (var draw = 0; draw < draws; draw++)
        {
            if (generator.TryDraw(random, out var givens, out var breach) is not { } variant)
            {
                tally.Add(breach!, givens);
                longest = Math.Max(longest, ++run);
                continue;
            }
            run = 0;
            kept++;
            var effort = EffortMeasure.Of(variant);
            (least, most) = (Math.Min(least, effort), Math.Max(most, effort));
        }
        return new(draws, kept, longest, tally.ToList(), kept == 0 ? 0 : least, most, generator.Rules);
    }

    private int OrderOf(Rejection rejection) => Rules.Select(rule => rule.Name).ToList().IndexOf(rejection.First.Rule);
}
