using System.Globalization;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>How a scale that counts ounces shows them: in halves, quarters, eighths or sixteenths, or with decimals.</summary>
/// <remarks>A division of 1/4 oz is a fraction, one of 0.05 oz a decimal: nobody reads 4 3/5 oz off a scale. Common practice, no source.</remarks>
/// <param name="Step">The division in ounces; above 0.</param>
/// <param name="Denominator">The finest fraction; null for a scale with decimals.</param>
/// <param name="Decimals">How many decimals; 0 to 2. 0 for a scale with fractions.</param>
public sealed record OunceReading(double Step, int? Denominator, int Decimals)
{
    private const double Near = 1e-6;

    /// <summary>More decimals no kitchen's scale has.</summary>
    private const int MostDecimals = 2;

    /// <summary>Quarter ounces, for a class that has no such scale: as <see cref="PoundsAndOunces"/> writes them.</summary>
    public static OunceReading Quarters { get; } = new(0.25, 4, 0);

    private static readonly int[] Fractions = [2, 4, 8, 16];

    /// <summary>In ounces: a finer scale counts grams.</summary>
    private const double LeastDivision = 0.01;

    /// <summary>
    /// How a scale reads, by its division; null for one that counts grams: whole ones, or tenths.
    /// </summary>
    public static OunceReading? Of(Mass resolution) =>
        resolution.Ounces < LeastDivision - Near
        || Math.Abs(Math.Round(resolution.Grams * 10, MidpointRounding.AwayFromZero) - resolution.Grams * 10) < Near
            ? null
        : Fractions.FirstOrDefault(parts => Math.Abs(resolution.Ounces * parts - 1) < Near) is > 0 and var parts
            ? new(1.0 / parts, parts, 0)
        : new(resolution.Ounces, null, Math.Clamp((int)Math.Ceiling(-Math.Log10(resolution.Ounces) - Near), 0, MostDecimals));

    /// <summary>A number of ounces as the scale shows it: <c>4.60</c>, <c>4 5/8</c>.</summary>
    /// <param name="ounces">Not negative.</param>
    /// <param name="everyDecimal">True for what is weighed, which a scale shows with every decimal; else no idle zeros.</param>
    public string Show(double ounces, bool everyDecimal)
    {
        if (Denominator is { } parts)
            return KitchenFraction.Show(ounces, parts);
        return Rounded(ounces).ToString(everyDecimal ? $"F{Decimals}" : "0.##", CultureInfo.InvariantCulture);
    }

    /// <summary>A number of ounces to the nearest division.</summary>
    internal double Rounded(double ounces) => Math.Round(ounces / Step + Near, MidpointRounding.AwayFromZero) * Step;
}
