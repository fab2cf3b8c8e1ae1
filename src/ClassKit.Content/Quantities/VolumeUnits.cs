using ClassKit.Baking.Quantities;

namespace ClassKit.Content.Quantities;

/// <summary>What labels and bills write volumes in, in large letters or small.</summary>
internal static class VolumeUnits
{
    /// <summary>
    /// Litres in each. The litre's parts by the SI; those of the US gallon by NIST Handbook 44, appendix C: 4 quarts, 8 pints, 128 fluid
    /// ounces.
    /// </summary>
    private static readonly Dictionary<string, double> Litres = new(StringComparer.OrdinalIgnoreCase)
    {
        ["L"] = 1,
        ["dL"] = 0.1,
        ["cL"] = 0.01,
        ["mL"] = 0.001,
        ["litre"] = 1,
        ["litres"] = 1,
        ["liter"] = 1,
        ["liters"] = 1,
        ["gal"] = Volume.LitresPerGallon,
        ["gallon"] = Volume.LitresPerGallon,
        ["gallons"] = Volume.LitresPerGallon,
        ["qt"] = Volume.LitresPerGallon / 4,
        ["quart"] = Volume.LitresPerGallon / 4,
        ["quarts"] = Volume.LitresPerGallon / 4,
        ["pt"] = Volume.LitresPerGallon / 8,
        ["pint"] = Volume.LitresPerGallon / 8,
        ["pints"] = Volume.LitresPerGallon / 8,
        ["fl oz"] = Volume.LitresPerFluidOunce,
    };

    /// <summary>Those that advice names.</summary>
    public static IReadOnlyList<string> Usual { get; } = ["L", "mL", "fl oz"];

    /// <summary>Litres in one; null for what is no unit of volume.</summary>
    public static double? Find(string unit) => Litres.TryGetValue(unit.Trim(), out var litres) ? litres : null;
}
