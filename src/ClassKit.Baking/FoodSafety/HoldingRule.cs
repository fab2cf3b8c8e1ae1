using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.FoodSafety;

/// <summary>
/// How warm and how cold ready food is kept. Localities differ, so it is a named setting: the house's own rule comes first.
/// </summary>
/// <param name="Name">What the setting is called.</param>
/// <param name="Hot">Hot food stays at this or above.</param>
/// <param name="Cold">Cold food stays at this or below.</param>
/// <param name="Source">Where it is published.</param>
public sealed record HoldingRule(string Name, Temperature Hot, Temperature Cold, string Source)
{
    /// <summary>The FDA Food Code: 135 °F (57 °C) and 41 °F (5 °C). The default.</summary>
    public static HoldingRule FoodCode { get; } =
        new(
            "FDA Food Code",
            Temperature.FromFahrenheit(135),
            Temperature.FromFahrenheit(41),
            "FDA Food Code 3-501.16 as adopted in WAC 246-215-03525"
        );

    /// <summary>The rule of a city, and of advice to consumers: 140 °F (60 °C) and, at the cold end, 41 °F (5 °C).</summary>
    public static HoldingRule OneHundredAndForty { get; } =
        new(
            "140 °F rule",
            Temperature.FromFahrenheit(140),
            Temperature.FromFahrenheit(41),
            "New York City Health Code, as reprinted: its hot limit is 140 °F"
        );

    /// <summary>All of the settings, the default first.</summary>
    public static IReadOnlyList<HoldingRule> All { get; } = [FoodCode, OneHundredAndForty];

    /// <summary>True if ready food may be kept at a temperature for as long as wanted.</summary>
    public bool Allows(Temperature food) => food.Celsius >= Hot.Celsius || food.Celsius <= Cold.Celsius;
}
