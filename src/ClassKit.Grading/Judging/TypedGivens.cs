using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Finds the givens that a formula has typed in: it behaves as though they never changed.</summary>
internal static class TypedGivens
{
    /// <summary>Two ways of working out the same number differ by less, relative to it.</summary>
    private const double Noise = 1e-9;

    /// <summary>The fewest givens that explain what the formula does under all inputs; empty if none do.</summary>
    public static IReadOnlyList<Given> In(Reading reading, Part part, IReadOnlyList<Trial> trials) =>
        Explaining(reading, part, trials, IsSame) is { Count: > 0 } exact ? exact : Explaining(reading, part, trials, part.Tolerance.Accepts);

    /// <summary>
    /// True if a formula stays within the tolerance though a given is typed in: the answer depends so little on it that no input of the exercise
    /// tells, but to the last digit the formula does what a typed number would, and not what the key does.
    /// </summary>
    public static bool AreHiddenByTolerance(Reading reading, Part part, IReadOnlyList<Trial> trials) =>
        !reading.AgreesThroughout((trial, value) => IsSame(trials[trial].Right.Answers[part.Id], value) || (trials[trial].FollowedThrough(part) is { } own && IsSame(own, value)))
        && Explaining(reading, part, trials, IsSame).Count > 0;

    private static IReadOnlyList<Given> Explaining(Reading reading, Part part, IReadOnlyList<Trial> trials, Func<double, double, bool> isThat)
    {
        var exercise = trials[0].Right.Exercise;
        var drawn = exercise.Givens.Where(given => !given.IsConstant).ToList();
        return drawn.Select(given => (IReadOnlyList<Given>)[given])
            .Concat(drawn.SelectMany((one, at) => drawn.Skip(at + 1).Select(other => (IReadOnlyList<Given>)[one, other])))
            .FirstOrDefault(givens => Explain(givens, reading, part, trials, isThat)) ?? [];
    }

    private static bool Explain(IReadOnlyList<Given> givens, Reading reading, Part part, IReadOnlyList<Trial> trials, Func<double, double, bool> isThat)
    {
        var typed = givens.Select(given => given.Id).ToList();
        return new[] { false, true }.Any(throughout => reading.AgreesThroughout((trial, value) =>
            trials[trial].Typed(part, typed, trials[0], throughout) is { } expected && isThat(expected, value)));
    }

    private static bool IsSame(double expected, double value) => Math.Abs(expected - value) <= Noise * Math.Abs(expected);
}
