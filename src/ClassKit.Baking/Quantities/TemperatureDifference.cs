namespace ClassKit.Baking.Quantities;

/// <summary>A difference of temperatures, such as a friction factor. <c>default</c> is no difference.</summary>
/// <remarks>A difference of 1 K is one of 1.8 °F, exact (NIST SP 811, appendix B.9): unlike a temperature it has no offset.</remarks>
public readonly record struct TemperatureDifference
{
    private TemperatureDifference(double kelvins) => Kelvins = kelvins;

    /// <summary>In kelvins, which are degrees Celsius of difference.</summary>
    public double Kelvins { get; }

    /// <summary>In degrees Fahrenheit of difference.</summary>
    public double FahrenheitDegrees => Kelvins * 1.8;

    /// <summary>From kelvins; finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static TemperatureDifference FromKelvins(double kelvins) =>
        double.IsFinite(kelvins)
            ? new(kelvins)
            : throw new ArgumentOutOfRangeException(nameof(kelvins), kelvins, "A difference of temperatures is a finite number.");

    /// <summary>From degrees Fahrenheit of difference; finite.</summary>
    public static TemperatureDifference FromFahrenheitDegrees(double degrees) => FromKelvins(degrees / 1.8);
}
