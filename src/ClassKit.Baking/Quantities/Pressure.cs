namespace ClassKit.Baking.Quantities;

/// <summary>An absolute pressure. <c>default</c> is a vacuum, 0 Pa.</summary>
public readonly record struct Pressure
{
    private Pressure(double pascals) => Pascals = pascals;

    /// <summary>The standard atmosphere, 101 325 Pa, exact (NIST SP 811, appendix B.8).</summary>
    public static Pressure Standard { get; } = new(101_325);

    /// <summary>In pascals.</summary>
    public double Pascals { get; }

    /// <summary>In hectopascals, which are millibars.</summary>
    public double Hectopascals => Pascals / 100;

    /// <summary>In megapascals.</summary>
    public double Megapascals => Pascals / 1e6;

    /// <summary>From pascals; finite, at least 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or not a finite number.</exception>
    public static Pressure FromPascals(double pascals) =>
        double.IsFinite(pascals) && pascals >= 0
            ? new(pascals)
            : throw new ArgumentOutOfRangeException(
                nameof(pascals),
                pascals,
                "An absolute pressure is a finite number of pascals, at least 0."
            );

    /// <summary>From megapascals; finite, at least 0.</summary>
    public static Pressure FromMegapascals(double megapascals) => FromPascals(megapascals * 1e6);
}
