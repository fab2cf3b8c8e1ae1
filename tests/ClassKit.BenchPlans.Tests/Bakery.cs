using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Tests;

/// <summary>Classes to plan for. Their times are common practice, no source.</summary>
internal static class Bakery
{
    public static readonly EquipmentKind Burner = EquipmentKind.Find("burner")!;
    public static readonly EquipmentKind Griddle = EquipmentKind.Find("griddle")!;
    public static readonly EquipmentKind Mixer = EquipmentKind.Find("mixer")!;

    /// <summary>A yeast bread that keeps overnight after its first rise.</summary>
    public static BenchBread Buns { get; } =
        new(
            "buns",
            "Buns",
            [
                Hands("Warm", 3, 5) with
                {
                    Uses = [new(Burner, 1)],
                },
                Hands("Mix", 5, 7) with
                {
                    Uses = [new(Mixer, 1)],
                },
                Alone("First rise", 40, 50) with
                {
                    RiseAt = Temperature.FromCelsius(28),
                    MayBeDoneAhead = true,
                },
                Hands("Fill", 5, 8),
                Alone("Second rise", 25, 30) with
                {
                    RiseAt = Temperature.FromCelsius(28),
                },
                Baked("Bake", 18, 20, 190),
                Alone("Cool", 10, 15),
            ]
        );

    /// <summary>Baked with the door shut in an oven that is turned down.</summary>
    public static BenchBread Popovers { get; } =
        new(
            "popovers",
            "Popovers",
            [
                Hands("Mix", 5, 7),
                Alone("Rest", 20, 40) with
                {
                    Wait = new(0, 30),
                },
                Hands("Fill", 2, 3) with
                {
                    People = 2,
                    Oven = new(Temperature.FromCelsius(220), 1, true),
                },
                Baked("Bake hot", 20, 20, 220, shut: true),
                Baked("Dry", 13, 17, 175, shut: true),
                Hands("Pierce", 1, 2),
            ]
        );

    /// <summary>A batter that cannot wait.</summary>
    public static BenchBread Muffins { get; } =
        new(
            "muffins",
            "Muffins",
            [
                Hands("Weigh", 6, 9) with
                {
                    Wait = new(0, 20),
                },
                Hands("Mix", 1, 1) with
                {
                    Wait = new(0, 1),
                },
                Hands("Fill", 2, 3) with
                {
                    Wait = new(0, 2),
                },
                Baked("Bake", 16, 18, 200),
                Alone("Cool", 5, 10),
            ]
        );

    /// <summary>24 students in 6 teams bake all three.</summary>
    public static BenchClass Full(int period = 150, int ovens = 3, int places = 6, int burners = 6) =>
        new(
            new(period, 10, 15, 5),
            6,
            4,
            [new(Burner, burners)],
            Ovens(ovens, places),
            [Buns, Popovers, Muffins],
            [new("Warming", 3, new(0, 0)), new("Filling hot tins", 4, new(1, 2)), new("A dozen strokes", 3, new(2, 1))]
        );

    /// <summary>One bread for some teams, nothing to begin or end with.</summary>
    public static BenchClass Simple(BenchBread bread, int period, int teams = 1, int people = 2, int ovens = 1, int places = 1) =>
        new(new(period, 0, 0, 0), teams, people, [], Ovens(ovens, places), [bread], []);

    public static OvenBank Ovens(int count, int places, int heatUp = 0) =>
        new(count, places, heatUp, OvenBank.UsualWarming, OvenBank.UsualCooling);

    public static BenchStep Hands(string name, int min, int max) => new(name, min, max);

    public static BenchStep Alone(string name, int min, int max) => new(name, min, max) { People = 0 };

    public static BenchStep Baked(string name, int min, int max, double celsius, int places = 1, bool shut = false) =>
        Alone(name, min, max) with
        {
            Oven = new(Temperature.FromCelsius(celsius), places, shut),
        };
}
