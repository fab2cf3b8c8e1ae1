using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.NearMisses.Places;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.NearMisses;

/// <summary>Looks for the wrong formula near the key that an answer behaves like.</summary>
internal static class NearMissSearch
{
    /// <summary>
    /// Where a key rounds to whole packets, many formulas give the same few numbers: so many different ones say which it was.
    /// </summary>
    public const int FewestForOne = 3;

    /// <summary>The same where two edits are looked for.</summary>
    public const int FewestForTwo = 5;

    /// <summary>Decimals that answers are rounded to; null for not rounded.</summary>
    public static IReadOnlyList<int?> Rounded { get; } = [null, 4, 3, 2, 1, 0];

    /// <summary>The first neighbour, one edit away, that gives what a formula gives under every trial; null if none does.</summary>
    /// <remarks>
    /// To the last digit, or else rounded to the same decimals under each: how a wrong answer is rounded is not what is wrong with it.
    /// </remarks>
    /// <param name="table">The part's neighbours.</param>
    /// <param name="trials">What names stand for under each trial.</param>
    /// <param name="values">What the formula gives under each.</param>
    public static Neighbour? OneEdit(
        NeighbourTable table,
        IReadOnlyList<IReadOnlyDictionary<string, CellValue>> trials,
        IReadOnlyList<double> values
    )
    {
        var dealt = table.Values(trials[0]);
        var near = table
            .One.Zip(dealt, (neighbour, value) => (Neighbour: neighbour, Value: value))
            .Where(one => one.Value is { } value && IsNear(value, values[0]))
            .Select(one => one.Neighbour)
            .ToList();
        return near.Count == 0 || IsOfFew(values)
            ? null
            : First(near, (one, decimals) =>
                Gives(one, trials, values, (given, value) => Near.Computed.Same(Round(given, decimals), value))
            );
    }

    /// <summary>The same with two edits, to the last digit.</summary>
    /// <param name="table">The part's neighbours.</param>
    /// <param name="valueAtInput">What the formula gives for <see cref="SecondEdits.Input"/>.</param>
    /// <param name="trials">What names stand for under each trial, on right earlier answers.</param>
    /// <param name="values">What the formula gives under each.</param>
    public static Neighbour? TwoEdits(
        NeighbourTable table,
        double valueAtInput,
        IReadOnlyList<IReadOnlyDictionary<string, CellValue>> trials,
        IReadOnlyList<double> values
    ) =>
        Distinct(values) < FewestForTwo
            ? null
            : table.Two.Giving(valueAtInput).FirstOrDefault(two => Gives(two, trials, values, Near.Computed.Same));

    /// <summary>
    /// The one neighbour that gives a typed number to its digits; null where another gives it to three, if only while earlier answers are
    /// right.
    /// </summary>
    /// <param name="table">The part's neighbours.</param>
    /// <param name="grounds">What names may stand for: with right earlier answers, or the student's own.</param>
    /// <param name="typed">The number.</param>
    public static Neighbour? OfNumber(NeighbourTable table, IReadOnlyList<IReadOnlyDictionary<string, CellValue>> grounds, double typed)
    {
        if (Giving(table, table.One, grounds, typed) is not [var (only, values)])
            return null;
        if (Giving(table, table.Others.Untold, grounds, typed).Count > 0)
            return null;
        return values.Exists(value => value is { } given && TypedDigits.AreThoseOf(given, typed)) ? only : null;
    }

    /// <summary>At most two of them that give a number to three digits on some ground, with what they give on each.</summary>
    private static List<(Neighbour Neighbour, List<double?> Values)> Giving(
        NeighbourTable table,
        IReadOnlyList<Neighbour> neighbours,
        IReadOnlyList<IReadOnlyDictionary<string, CellValue>> grounds,
        double typed
    )
    {
        var values = grounds.Select(ground => table.Values(neighbours, ground)).ToList();
        return
        [
            .. neighbours
                .Select((neighbour, at) => (Neighbour: neighbour, Values: values.ConvertAll(ground => ground[at])))
                .Where(one =>
                    one.Neighbour.Family != EditFamily.TakenIn
                    && one.Values.Exists(value => value is { } given && TypedDigits.AgreeToThree(given, typed))
                )
                .Take(2),
        ];
    }

    /// <summary>True if a neighbour may give a value, rounded or not.</summary>
    public static bool IsNear(double given, double value)
    {
        foreach (var decimals in Rounded)
        {
            if (Near.Computed.Same(Round(given, decimals), value))
                return true;
        }
        return false;
    }

    private static bool IsOfFew(IReadOnlyList<double> values) => Distinct(values) < Math.Min(FewestForOne, values.Count);

    private static Neighbour? First(List<Neighbour> near, Func<Neighbour, int?, bool> gives) =>
        Rounded.Select(decimals => near.Find(one => gives(one, decimals))).FirstOrDefault(found => found is not null);

    /// <summary>A value rounded, or as it is.</summary>
    public static double Round(double value, int? decimals) =>
        decimals is { } to ? Math.Round(value, to, MidpointRounding.AwayFromZero) : value;

    /// <summary>What of a number counts when different ones are counted.</summary>
    public static double Noticed(double value) => Math.Round(value, 6, MidpointRounding.AwayFromZero);

    private static int Distinct(IReadOnlyList<double> values) => values.Select(Noticed).Distinct().Count();

    /// <summary>True if a neighbour gives a formula's values under every trial.</summary>
    public static bool Gives(
        Neighbour neighbour,
        IReadOnlyList<IReadOnlyDictionary<string, CellValue>> trials,
        IReadOnlyList<double> values,
        Func<double, double, bool> isThat
    )
    {
        for (var trial = 0; trial < trials.Count; trial++)
        {
            if (
                new NamedValues(trials[trial], SearchBudget.OneFormula).Number(neighbour.Root) is not { } value
                || !isThat(value, values[trial])
            )
                return false;
        }
        return true;
    }
}
