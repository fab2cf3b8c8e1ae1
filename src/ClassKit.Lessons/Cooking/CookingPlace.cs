using ClassKit.Baking.Cooking;
using ClassKit.BenchPlans.Classes;

namespace ClassKit.Lessons.Cooking;

/// <summary>Where a way of cooking happens: how steps name it, and what it occupies at the bench.</summary>
/// <param name="Way">Which way.</param>
/// <param name="Name">As the brackets of a step and every page name it: <c>fryer</c>.</param>
/// <param name="Kind">The equipment that it takes; null for ovens, which the plan knows by their heat.</param>
/// <param name="HasHeat">True if a step says how hot it is; steam, boiling water, flames and microwaves are as hot as they are.</param>
/// <param name="IsWatched">True if somebody stands by all the time: hot fat, a flame, what must be turned.</param>
/// <param name="HeatUpMinutes">From cold, where a profile says nothing. From memory.</param>
public sealed record CookingPlace(CookingWay Way, string Name, EquipmentKind? Kind, bool HasHeat, bool IsWatched, int HeatUpMinutes)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<CookingPlace> All { get; } =
    [
        new(CookingWay.Oven, "oven", null, true, false, 20),
        new(CookingWay.PizzaOven, "pizza oven", EquipmentKind.PizzaOven, true, true, 60),
        new(CookingWay.CombiOven, "combi oven", EquipmentKind.CombiOven, true, false, 15),
        new(CookingWay.Steamer, "steamer", EquipmentKind.Steamer, false, false, 10),
        new(CookingWay.Griddle, "griddle", EquipmentKind.Griddle, true, true, 15),
        new(CookingWay.Pan, "pan", EquipmentKind.Burner, true, true, 0),
        new(CookingWay.Fryer, "fryer", EquipmentKind.Fryer, true, true, 15),
        new(CookingWay.Flame, "flame", EquipmentKind.Burner, false, true, 0),
        new(CookingWay.BoilingWater, "boiling water", EquipmentKind.Burner, false, true, 0),
        new(CookingWay.Microwave, "microwave", EquipmentKind.Microwave, false, false, 0),
    ];

    /// <summary>The place of a way.</summary>
    public static CookingPlace Of(CookingWay way) => All.First(place => place.Way == way);
}
