namespace ClassKit.Grading;

/// <summary>One way to read an answer as a number: what it is under each trial, the dealt inputs first.</summary>
/// <param name="Values">A number a trial; null where the cell gives none.</param>
/// <param name="IsFormula">True if the values come from a formula that depends on the sheet's own cells, so that all trials count.</param>
internal sealed record Reading(IReadOnlyList<double?> Values, bool IsFormula)
{
    /// <summary>What the answer is on the dealt inputs.</summary>
    public double? Dealt => Values[0];

    /// <summary>True if the answer agrees with what <paramref name="expected"/> says for every trial that it can be held against: all for a formula, the dealt inputs for a typed number.</summary>
    public bool Agrees(Func<int, double, bool> expected) => IsFormula ? AgreesThroughout(expected) : Dealt is { } value && expected(0, value);

    /// <summary>True if the answer agrees with what <paramref name="expected"/> says for every trial.</summary>
    public bool AgreesThroughout(Func<int, double, bool> expected)
    {
        for (var trial = 0; trial < Values.Count; trial++)
        {
            if (Values[trial] is not { } value || !expected(trial, value)) return false;
        }
        return true;
    }
}
