namespace ClassKit.Baking.Quantities;

/// <summary>A temperature. <c>default</c> is 0 °C.</summary>
/// <remarks>t/°C = (t/°F - 32)/1.8 and T/K = t/°C + 273.15, exact (NIST SP 811, appendix B.9).</remarks>
public readonly record struct Temperature
{
    private const double CelsiusOfZeroKelvin = -273.15;

    private Temperature(double celsius) => Celsius = celsius;

    /// <summary>In degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>In degrees Fahrenheit.</summary>
    public double Fahrenheit => Celsius * 1.8 + 32;

    /// <summary>In kelvin.</summary>
    public double Kelvin => Celsius - CelsiusOfZeroKelvin;

    /// <summary>From degrees Celsius, at least absolute zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero, or not finite.</exception>
    public static Temperature FromCelsius(double celsius) =>
        double.IsFinite(celsius) && celsius >= CelsiusOfZeroKelvin
            ? new(celsius)
            : throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "A temperature is a finite number, at least -273.15 °C.");

    /// <summary>From degrees Fahrenheit, at least absolute zero.</summary>
    public static Temperature FromFahrenheit(double fahrenheit) => FromCelsius((fahrenheit - 32) / 1.8);

    /// <summary>From kelvin, at least 0.</summary>
    public static Temperature FromKelvin(double kelvin) => FromCelsius(kelvin + CelsiusOfZeroKelvin);
}
