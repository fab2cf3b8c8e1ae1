namespace ClassKit.Exercises;

/// <summary>How far an answer may be from the key's value and still be right; both bounds are inclusive.</summary>
/// <param name="Amount">In the answer's own scale (0.005 is half a percentage point) if absolute; a fraction of the key's value if relative. Not negative.</param>
/// <param name="IsRelative">Which of the two.</param>
/// <remarks>Inclusive bounds as in 1EdTech QTI's <c>equal</c>; for a negative key the relative bound uses its absolute value, which QTI's own formula does not.</remarks>
public readonly record struct Tolerance(double Amount, bool IsRelative)
{
    /// <summary>Room for the last bits of a double, so that an answer exactly on the bound is inside.</summary>
    private const double Slack = 1e-9;

    /// <summary>An absolute tolerance.</summary>
    public static Tolerance Absolute(double amount) => new(amount, false);

    /// <summary>A tolerance as a fraction of the key's value.</summary>
    public static Tolerance Relative(double fraction) => new(fraction, true);

    /// <summary>The greatest accepted distance from <paramref name="expected"/>.</summary>
    public double Around(double expected) => IsRelative ? Amount * Math.Abs(expected) : Amount;

    /// <summary>The least and the greatest number that is right where <paramref name="expected"/> is asked, both inclusive.</summary>
    public (double Low, double High) Range(double expected)
    {
        var reach = Around(expected) + Slack * Math.Max(1, Math.Abs(expected));
        return (expected - reach, expected + reach);
    }

    /// <summary>True if <paramref name="actual"/> is right where <paramref name="expected"/> is asked.</summary>
    public bool Accepts(double expected, double actual)
    {
        var (low, high) = Range(expected);
        return actual >= low && actual <= high;
    }
}
