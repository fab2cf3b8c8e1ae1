namespace ClassKit.Baking.Quantities;

/// <summary>A mass. <c>default</c> is nothing at all, 0 g.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    /// <summary>Grams in an avoirdupois pound, exact (NIST SP 811, appendix B).</summary>
    public const double GramsPerPound = 453.59237;

    /// <summary>Grams in an avoirdupois ounce, exact: a sixteenth of a pound.</summary>
    public const double GramsPerOunce = GramsPerPound / 16;

    private Mass(double grams) => Grams = grams;

    /// <summary>In grams.</summary>
    public double Grams { get; }

    /// <summary>In kilograms.</summary>
    public double Kilograms => Grams / 1000;

    /// <summary>In avoirdupois ounces.</summary>
    public double Ounces => Grams / GramsPerOunce;

    /// <summary>In avoirdupois pounds.</summary>
    public double Pounds => Grams / GramsPerPound;

    /// <summary>From grams; finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Mass FromGrams(double grams) =>
        double.IsFinite(grams)
            ? new(grams)
            : throw new ArgumentOutOfRangeException(nameof(grams), grams, "A mass is a finite number of grams.");

    /// <summary>From kilograms; finite.</summary>
    public static Mass FromKilograms(double kilograms) => FromGrams(kilograms * 1000);

    /// <summary>From avoirdupois ounces; finite.</summary>
    public static Mass FromOunces(double ounces) => FromGrams(ounces * GramsPerOunce);

    /// <summary>From avoirdupois pounds; finite.</summary>
    public static Mass FromPounds(double pounds) => FromGrams(pounds * GramsPerPound);

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);

    /// <summary>The sum.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.Grams + right.Grams);

    /// <summary>The difference, which may be negative.</summary>
    public static Mass operator -(Mass left, Mass right) => new(left.Grams - right.Grams);

    /// <summary>Scaled by a factor.</summary>
    public static Mass operator *(Mass mass, double factor) => FromGrams(mass.Grams * factor);

    /// <summary>Divided by a number other than 0.</summary>
    public static Mass operator /(Mass mass, double divisor) => FromGrams(mass.Grams / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Mass left, Mass right) => left.Grams / right.Grams;

    /// <summary>Less than.</summary>
    public static bool operator <(Mass left, Mass right) => left.Grams < right.Grams;

    /// <summary>More than.</summary>
    public static bool operator >(Mass left, Mass right) => left.Grams > right.Grams;

    /// <summary>At most.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Grams <= right.Grams;

    /// <summary>At least.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Grams >= right.Grams;
}
