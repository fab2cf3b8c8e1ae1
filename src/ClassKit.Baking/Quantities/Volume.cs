namespace ClassKit.Baking.Quantities;

/// <summary>A volume. <c>default</c> is nothing, 0 L.</summary>
/// <remarks>US measures: NIST SP 811, appendix B.8; a gallon is 231 cubic inches, exact, and everything else a part of it.</remarks>
public readonly record struct Volume : IComparable<Volume>
{
    /// <summary>Litres in a US gallon, exact.</summary>
    public const double LitresPerGallon = 3.785411784;

    /// <summary>Litres in a US cup, exact: a sixteenth of a gallon.</summary>
    public const double LitresPerCup = LitresPerGallon / 16;

    /// <summary>Litres in a US fluid ounce, exact: an eighth of a cup.</summary>
    public const double LitresPerFluidOunce = LitresPerCup / 8;

    /// <summary>Litres in a US tablespoon, exact: a sixteenth of a cup.</summary>
    public const double LitresPerTablespoon = LitresPerCup / 16;

    /// <summary>Litres in a US teaspoon, exact: a third of a tablespoon.</summary>
    public const double LitresPerTeaspoon = LitresPerCup / 48;

    private Volume(double litres) => Litres = litres;

    /// <summary>In litres.</summary>
    public double Litres { get; }

    /// <summary>In millilitres.</summary>
    public double Millilitres => Litres * 1000;

    /// <summary>In US cups.</summary>
    public double Cups => Litres / LitresPerCup;

    /// <summary>In US fluid ounces.</summary>
    public double FluidOunces => Litres / LitresPerFluidOunce;

    /// <summary>In US tablespoons.</summary>
    public double Tablespoons => Litres / LitresPerTablespoon;

    /// <summary>In US teaspoons.</summary>
    public double Teaspoons => Litres / LitresPerTeaspoon;

    /// <summary>From litres; finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Volume FromLitres(double litres) =>
        double.IsFinite(litres)
            ? new(litres)
            : throw new ArgumentOutOfRangeException(nameof(litres), litres, "A volume is a finite number of litres.");

    /// <summary>From millilitres; finite.</summary>
    public static Volume FromMillilitres(double millilitres) => FromLitres(millilitres / 1000);

    /// <summary>From US cups; finite.</summary>
    public static Volume FromCups(double cups) => FromLitres(cups * LitresPerCup);

    /// <summary>From US tablespoons; finite.</summary>
    public static Volume FromTablespoons(double tablespoons) => FromLitres(tablespoons * LitresPerTablespoon);

    /// <summary>From US teaspoons; finite.</summary>
    public static Volume FromTeaspoons(double teaspoons) => FromLitres(teaspoons * LitresPerTeaspoon);

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Litres.CompareTo(other.Litres);

    /// <summary>The sum.</summary>
    public static Volume operator +(Volume left, Volume right) => new(left.Litres + right.Litres);

    /// <summary>The difference, which may be negative.</summary>
    public static Volume operator -(Volume left, Volume right) => new(left.Litres - right.Litres);

    /// <summary>Scaled by a factor.</summary>
    public static Volume operator *(Volume volume, double factor) => FromLitres(volume.Litres * factor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Volume left, Volume right) => left.Litres / right.Litres;

    /// <summary>Less than.</summary>
    public static bool operator <(Volume left, Volume right) => left.Litres < right.Litres;

    /// <summary>More than.</summary>
    public static bool operator >(Volume left, Volume right) => left.Litres > right.Litres;

    /// <summary>At most.</summary>
    public static bool operator <=(Volume left, Volume right) => left.Litres <= right.Litres;

    /// <summary>At least.</summary>
    public static bool operator >=(Volume left, Volume right) => left.Litres >= right.Litres;
}
