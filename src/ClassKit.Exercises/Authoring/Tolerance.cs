namespace ClassKit.Exercises.Authoring;

/// <summary>How exact an answer must be: how far from the key's value it may be, or to which step both must round alike.</summary>
/// <param name="Amount">
/// In the answer's own scale (0.005 is half a percentage point) if absolute; a fraction of the key's value if relative. Not negative. For a
/// rounding the step, above 0.
/// </param>
/// <param name="IsRelative">True if the amount is a fraction.</param>
/// <remarks>
/// Inclusive bounds as in 1EdTech QTI's <c>equal</c>; for a negative key the relative bound uses its absolute value, which QTI's own
/// formula does not.
/// </remarks>
public readonly record struct Tolerance(double Amount, bool IsRelative)
{
    /// <summary>Room for the last bits of a double, so that an answer exactly on the bound is inside.</summary>
    private const double Slack = 1e-9;

    /// <summary>
    /// True if an answer is right that rounds to the same multiple of the amount as the key's value; halves go away from zero, as in a
    /// spreadsheet.
    /// </summary>
    public bool IsRounding { get; init; }

    /// <summary>An absolute tolerance.</summary>
    public static Tolerance Absolute(double amount) => new(amount, false);

    /// <summary>A tolerance as a fraction of the key's value.</summary>
    public static Tolerance Relative(double fraction) => new(fraction, true);

    /// <summary>Right to the nearest multiple of a step above 0.</summary>
    public static Tolerance Rounding(double step) => new(step, false) { IsRounding = true };

    /// <summary>A share of the amount, above 0; a tolerance that is a fraction of the value stays as it is.</summary>
    public Tolerance Shrunk(double share) => IsRelative ? this : this with { Amount = Amount * share };

    /// <summary>The multiple of a rounding's step that a value rounds to.</summary>
    public double Nearest(double value) => Math.Round(value / Amount, MidpointRounding.AwayFromZero) * Amount;

    /// <summary>The greatest accepted distance from <paramref name="expected"/>.</summary>
    public double Around(double expected) =>
        IsRounding ? (Amount / 2) + Math.Abs(expected - Nearest(expected))
        : IsRelative ? Amount * Math.Abs(expected)
        : Amount;

    /// <summary>The least and the greatest number that is right where <paramref name="expected"/> is asked, both inclusive.</summary>
    public (double Low, double High) Range(double expected)
    {
        var slack = Slack * Math.Max(1, Math.Abs(expected));
        var (middle, reach) = IsRounding ? (Nearest(expected), Amount / 2) : (expected, Around(expected));
        // The half further from zero rounds on to the next multiple, so that it is out where nothing else is.
        return (
            middle - reach + (IsRounding && middle <= 0 ? slack : -slack),
            middle + reach + (IsRounding && middle >= 0 ? -slack : slack)
        );
    }

    /// <summary>True if <paramref name="actual"/> is right where <paramref name="expected"/> is asked.</summary>
    public bool Accepts(double expected, double actual)
    {
        var (low, high) = Range(expected);
        return actual >= low && actual <= high;
    }
}
