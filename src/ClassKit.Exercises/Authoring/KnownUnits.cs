namespace ClassKit.Exercises.Authoring;

/// <summary>The units that we know, by every way of writing them.</summary>
/// <remarks>
/// Codes are those of the spreadsheet function CONVERT (ECMA-376 Part 1, 18.17.7.48), so that a cell and a typed unit cannot disagree.
/// Masses and volumes never mix: that would need a density.
/// </remarks>
public static class KnownUnits
{
    /// <summary>In any letter case; of several ways to write one the sign is first.</summary>
    private static readonly (UnitKind Kind, string? Code, string[] Written)[] All =
    [
        (UnitKind.Mass, "mg", ["mg"]),
        (UnitKind.Mass, "g", ["g", "gr", "gram", "grams"]),
        (UnitKind.Mass, "kg", ["kg"]),
        (UnitKind.Mass, "ozm", ["oz"]),
        (UnitKind.Mass, "lbm", ["lb", "lbs"]),
        (UnitKind.Volume, "ml", ["ml"]),
        (UnitKind.Volume, "cl", ["cl"]),
        (UnitKind.Volume, "dl", ["dl"]),
        (UnitKind.Volume, "l", ["l", "litre", "litres", "liter", "liters"]),
        (UnitKind.Volume, "tsp", ["tsp"]),
        (UnitKind.Volume, "tbs", ["tbsp"]),
        (UnitKind.Volume, "cup", ["cup", "cups"]),
        (UnitKind.Time, "sec", ["s"]),
        (UnitKind.Time, "mn", ["min"]),
        (UnitKind.Time, "hr", ["h"]),
        (UnitKind.Temperature, "C", ["°C", "C", "deg C", "Celsius"]),
        (UnitKind.Temperature, "F", ["°F", "F", "deg F", "Fahrenheit"]),
        (UnitKind.Temperature, "K", ["K"]),
        (UnitKind.Mass, "g", ["grammes"]),
        (UnitKind.Mass, "kg", ["kilo", "kilos", "kilogram", "kilograms"]),
        (UnitKind.Mass, "ozm", ["ounce", "ounces"]),
        (UnitKind.Mass, "lbm", ["pound", "pounds"]),
        (UnitKind.Amount, null, ["mol", "mmol"]),
        (UnitKind.Length, null, ["cm", "mm", "m"]),
        (UnitKind.Pressure, null, ["kPa", "hPa"]),
        (UnitKind.Count, null, ["pieces"]),
        (UnitKind.Money, null, ["dollars", "dollar", "euros", "euro", "$", "€", "£", "¥", "CHF", "EUR", "GBP", "USD", "pounds sterling"]),
    ];

    private static readonly Dictionary<string, (UnitKind Kind, string? Code)> ByName = All.SelectMany(unit =>
            unit.Written.Select(written => KeyValuePair.Create(written, (unit.Kind, unit.Code)))
        )
        .ToDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>Every way of writing a unit that can be converted, with its code.</summary>
    public static IReadOnlyList<(string Written, string Code)> Convertible { get; } =
    [.. All.Where(unit => unit.Code is not null).SelectMany(unit => unit.Written.Select(written => (written, unit.Code!)))];

    /// <summary>What is written, without the marks around it that say nothing.</summary>
    public static string Bare(string written) => written.Trim(' ', '.', ',', ';', '!', '(', ')', '[', ']');

    /// <summary>The kind and the code of a unit as somebody wrote it; a kind alone where nothing converts it.</summary>
    public static (UnitKind Kind, string? Code) Find(string written) =>
        Bare(written) is { Length: > 0 } bare ? ByName.GetValueOrDefault(bare, (UnitKind.Other, null)) : (UnitKind.None, null);
}
