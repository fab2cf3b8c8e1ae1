using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Finds the givens that a formula has typed in: it behaves as though they never changed.</summary>
internal static class TypedGivens
{
    /// <summary>The fewest givens that explain what the formula does under all inputs; empty if none do.</summary>
    public static IReadOnlyList<Given> In(Reading reading, Part part, IReadOnlyList<Trial> trials)
    {
        var exercise = trials[0].Right.Exercise;
        var drawn = exercise.Givens.Where(given => !given.IsConstant).ToList();
        return drawn.Select(given => (IReadOnlyList<Given>)[given])
            .Concat(drawn.SelectMany((one, at) => drawn.Skip(at + 1).Select(other => (IReadOnlyList<Given>)[one, other])))
            .FirstOrDefault(givens => Explain(givens, reading, part, trials)) ?? [];
    }

    private static bool Explain(IReadOnlyList<Given> givens, Reading reading, Part part, IReadOnlyList<Trial> trials)
    {
        var typed = givens.Select(given => given.Id).ToList();
        return new[] { false, true }.Any(throughout => reading.AgreesThroughout((trial, value) =>
            trials[trial].Typed(part, typed, trials[0], throughout) is { } expected && part.Tolerance.Accepts(expected, value)));
    }
}
