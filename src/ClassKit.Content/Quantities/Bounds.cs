using System.Globalization;

namespace ClassKit.Content.Quantities;

/// <summary>Between what a number must lie, as written in the file.</summary>
internal sealed record Bounds(double Low, bool LowIncluded, double High = double.PositiveInfinity, bool HighIncluded = true)
{
    public static readonly Bounds AboveZero = new(0, false);
    public static readonly Bounds ZeroOrMore = new(0, true);

    /// <summary>What a class can count: keeps a slip of the finger from asking for a million pieces.</summary>
    public static readonly Bounds Countable = new(1, true, 10_000);

    /// <summary>What a part or a criterion can be worth, in points.</summary>
    public static readonly Bounds Worth = new(0, false, 10_000);

    public static readonly Bounds Share = new(0, true, 100);
    public static readonly Bounds ShareBelowAll = new(0, true, 100, false);

    public bool Hold(double number) => (LowIncluded ? number >= Low : number > Low) && (HighIncluded ? number <= High : number < High);

    /// <summary>In words: <c>above 0</c>, <c>from 0 to 100</c>.</summary>
    public override string ToString()
    {
        var low = Low.ToString(CultureInfo.InvariantCulture);
        var high = High.ToString(CultureInfo.InvariantCulture);
        return double.IsPositiveInfinity(High)
            ? LowIncluded
                ? $"{low} or more"
                : $"above {low}"
            : $"{(LowIncluded ? $"from {low}" : $"above {low}")} {(HighIncluded ? $"to {high}" : $"to less than {high}")}";
    }
}
