namespace ClassKit.Baking.Household;

/// <summary>What an egg of a size weighs without its shell.</summary>
public static class EggSize
{
    /// <summary>How much of an egg is shell and stays behind; from memory, as all the world's tables have about this.</summary>
    private const double Shell = 0.12;

    /// <summary>By what the size is called: in words those of the United States, in letters those of the European Union.</summary>
    /// <remarks>
    /// Words: USDA SR28 household weights, NDB 01123. Letters: Regulation (EC) 589/2008, Article 4, in the shell: S below 53 g, M to 63 g,
    /// L to 73 g, XL above; here the middle of the class, 48 g for S and 78 g for XL, which are open to one side.
    /// </remarks>
    private static readonly Dictionary<string, double> BySize = new(StringComparer.OrdinalIgnoreCase)
    {
        ["small"] = 38,
        ["medium"] = 44,
        ["large"] = 50,
        ["extra large"] = 56,
        ["jumbo"] = 63,
        ["S"] = 48 * (1 - Shell),
        ["M"] = 58 * (1 - Shell),
        ["L"] = 68 * (1 - Shell),
        ["XL"] = 78 * (1 - Shell),
    };

    /// <summary>The sizes.</summary>
    public static IReadOnlyCollection<string> All => BySize.Keys;

    /// <summary>In grams; null for a size that is not known.</summary>
    public static double? GramsOf(string size)
    {
        ArgumentNullException.ThrowIfNull(size);
        return BySize.TryGetValue(size, out var grams) ? grams : null;
    }
}
