namespace ClassKit.Exercises.Authoring;

/// <summary>The unit beside a cell: how its author wrote it, what it measures, and what it says about the number in the cell.</summary>
/// <remarks>
/// Two units are one if they are written alike. One that we do not know is a unit like any other, of which nothing else is known.
/// </remarks>
public sealed record Unit
{
    private Unit(string sign)
    {
        Sign = sign;
        (Kind, Code) = sign == PercentSign ? (UnitKind.Share, null) : KnownUnits.Find(sign);
    }

    private const string PercentSign = "%";

    /// <summary>The unit whose cells hold a fraction and show it times 100: 65 % is stored as 0.65.</summary>
    public static Unit Percent { get; } = new(PercentSign);

    /// <summary>No unit.</summary>
    public static Unit None { get; } = new("");

    /// <summary>As its author wrote it and students read it; empty for none.</summary>
    public string Sign { get; }

    /// <summary>What it measures.</summary>
    public UnitKind Kind { get; }

    /// <summary>What the spreadsheet function CONVERT calls it; null for one that it does not know.</summary>
    public string? Code { get; }

    /// <summary>True where nothing is written beside the number.</summary>
    public bool IsNone => Sign.Length == 0;

    /// <summary>True if the cell asks for percent, so that both 0.65 and 65 are read as 65 %.</summary>
    public bool IsPercent => Kind == UnitKind.Share;

    /// <summary>True for money, however it is called: people write 2.50 and never 2.5, and a sign of it before a number.</summary>
    public bool IsMoney => Kind == UnitKind.Money;

    /// <summary>True for degrees of temperature.</summary>
    public bool IsTemperature => Kind == UnitKind.Temperature;

    /// <summary>
    /// True unless there cannot be less of it than nothing: a temperature or a difference in price may be negative, and so may what we do
    /// not know.
    /// </summary>
    public bool MayBeNegative =>
        Kind
            is not (
                UnitKind.Mass
                or UnitKind.Volume
                or UnitKind.Time
                or UnitKind.Length
                or UnitKind.Pressure
                or UnitKind.Amount
                or UnitKind.Count
            );

    /// <summary>
    /// What a cell's number is multiplied with to be read beside its unit: 100 in percent, else 1. Nobody else knows the 100.
    /// </summary>
    public int Scale => IsPercent ? 100 : 1;

    /// <summary>The fewest decimals that a number of this unit is written with.</summary>
    internal int LeastDecimals => IsMoney ? 2 : 0;

    /// <summary>The unit that somebody wrote.</summary>
    public static Unit Of(string sign)
    {
        ArgumentNullException.ThrowIfNull(sign);
        return new(sign);
    }

    /// <summary>A unit is what is written; so exercises that stand in code name it.</summary>
    public static implicit operator Unit(string sign) => Of(sign);

    /// <summary>A cell's number as it is read beside its unit: 65 for 0.65 in percent.</summary>
    public double Shown(double held) => held * Scale;

    /// <inheritdoc cref="Shown(double)"/>
    public decimal Shown(decimal held) => held * Scale;

    /// <summary>What a cell holds for a number that is read beside its unit: 0.65 for 65 in percent.</summary>
    public double Held(double shown) => shown / Scale;

    /// <inheritdoc cref="Held(double)"/>
    public decimal Held(decimal shown) => shown / Scale;

    /// <summary>The sign.</summary>
    public override string ToString() => Sign;
}
