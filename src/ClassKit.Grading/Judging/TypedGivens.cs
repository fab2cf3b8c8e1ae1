using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging;

/// <summary>Finds the givens that a formula has typed in: it behaves as though they never changed.</summary>
internal static class TypedGivens
{
    /// <summary>The fewest givens that explain what the formula does under all inputs; empty if none do.</summary>
    public static IReadOnlyList<Given> In(Behaviour behaviour, Part part, IReadOnlyList<Trial> trials) =>
        Explaining(behaviour, part, trials, Near.Computed.Same) is { Count: > 0 } exact
            ? exact
            : Explaining(behaviour, part, trials, part.Tolerance.Accepts);

    /// <summary>
    /// True if a formula stays within the tolerance though a given is typed in: the answer depends so little on it that no input of the
    /// exercise tells, but to the last digit the formula does what a typed number would, and not what the key does.
    /// </summary>
    public static bool AreHiddenByTolerance(Behaviour behaviour, Part part, IReadOnlyList<Trial> trials) =>
        !behaviour.IsExact && Explaining(behaviour, part, trials, Near.Computed.Same).Count > 0;

    private static IReadOnlyList<Given> Explaining(
        Behaviour behaviour,
        Part part,
        IReadOnlyList<Trial> trials,
        Func<double, double, bool> isThat
    )
    {
        var exercise = trials[0].Right.Exercise;
        var drawn = exercise.Givens.Where(given => !given.IsConstant).ToList();
        return drawn
            .Select(given => (IReadOnlyList<Given>)[given])
            .Concat(drawn.SelectMany((one, at) => drawn.Skip(at + 1).Select(other => (IReadOnlyList<Given>)[one, other])))
            .FirstOrDefault(givens => Explain(givens, behaviour, part, trials, isThat))
            ?? [];
    }

    private static bool Explain(
        IReadOnlyList<Given> givens,
        Behaviour behaviour,
        Part part,
        IReadOnlyList<Trial> trials,
        Func<double, double, bool> isThat
    )
    {
        var typed = givens.Select(given => given.Id).ToList();
        return new[] { false, true }.Any(throughout =>
            behaviour.Throughout(
                (trial, value) =>
                    Typed(typed, behaviour.Ground.Earlier[trial], part, trials[trial], trials[0], throughout) is { } expected
                    && isThat(expected, value)
            )
        );
    }

    /// <summary>
    /// What the key gives if some givens keep the values dealt; with <paramref name="throughout"/> the earlier parts are worked out with
    /// them as well, as in one long formula.
    /// </summary>
    private static double? Typed(
        IReadOnlyCollection<string> typed,
        IReadOnlyDictionary<string, double> earlier,
        Part part,
        Trial trial,
        Trial dealt,
        bool throughout
    )
    {
        var givens = trial.Right.Givens.ToDictionary(
            given => given.Key,
            given => typed.Contains(given.Key) ? dealt.Right.Givens[given.Key] : given.Value
        );
        return KeyValues.Number(part.Key, KeyValues.NamesInPlace(givens, throughout ? trial.WorkedOut(part, givens) : earlier));
    }
}
