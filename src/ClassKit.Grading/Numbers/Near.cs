namespace ClassKit.Grading.Numbers;

/// <summary>When two numbers are one: they differ by no more than two ways of working out the same number do.</summary>
/// <remarks>
/// Relative to the larger of the two, so that it does not matter which is named first; from a floor downwards the difference itself
/// counts, for around 0 there is no telling what is noise. What numbers come to and what people write have a floor each, and whoever asks
/// takes one of them: whether an answer is exact must not hang on who asks. How far off an answer may be is no matter of noise and stands
/// in its <see cref="Exercises.Authoring.Tolerance"/>.
/// </remarks>
internal sealed class Near
{
    /// <summary>Doubles keep some sixteen digits; no formula of a kitchen loses seven of them.</summary>
    private const double Noise = 1e-9;

    private readonly double _floor;

    private Near(double floor) => _floor = floor;

    /// <summary>
    /// For what formulas come to, keys and students' alike. Its floor is a millionth: nothing is asked in a kitchen of which that is much,
    /// and a given or an answer of a few thousandths is held to its own digits.
    /// </summary>
    public static Near Computed { get; } = new(1e-6);

    /// <summary>
    /// For what people write, read on the sheet and have on record, and for counts of digits: from 1 downwards it is the ninth decimal that
    /// counts.
    /// </summary>
    public static Near Written { get; } = new(1);

    /// <summary>True if two numbers are one; what is infinite or undefined is no number's like.</summary>
    public bool Same(double one, double other)
    {
        var apart = Math.Abs(one - other);
        return apart <= Noise * Math.Max(_floor, Math.Max(Math.Abs(one), Math.Abs(other))) && double.IsFinite(apart);
    }

    /// <summary>True if two rows of as many numbers are one, number by number.</summary>
    public bool Same(ReadOnlySpan<double> ones, ReadOnlySpan<double> others)
    {
        if (ones.Length != others.Length)
            return false;
        for (var at = 0; at < ones.Length; at++)
        {
            if (!Same(ones[at], others[at]))
                return false;
        }
        return true;
    }

    /// <summary>True if all numbers of a row are one; so they are where there is none.</summary>
    public bool AllSame(ReadOnlySpan<double> numbers)
    {
        foreach (var number in numbers)
        {
            if (!Same(numbers[0], number))
                return false;
        }
        return true;
    }
}
