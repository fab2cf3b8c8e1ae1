namespace ClassKit.LessonPacks.Tests.Samples;

/// <summary>
/// Packs of both shipped lessons for classes that differ: teams, periods, ovens, altitude, units. What pages tell must hold in every one of
/// them.
/// </summary>
internal static class Kitchens
{
    private const string Three = "one-tin-three-lifts";
    private const string Quick = "thin-air-quick-breads";

    private static readonly Dictionary<string, Lazy<BuiltPack>> Known = new()
    {
        ["demo"] = new(() => BuiltPack.Demo),
        ["mountain"] = new(() => BuiltPack.Mountain),
        ["cool kitchen"] = new(() =>
            BuiltPack.Adapted(Three, "class.md", "kitchen temperature: 18 °C", "teams: 4", "students: 14", "units: metric")
        ),
        ["one oven, two teams"] = new(() =>
            BuiltPack.Adapted(Three, "class.md", "students: 7", "teams: 2", "ovens: 1", "oven places: 4", "period: 210 min")
        ),
        ["short period"] = new(() => BuiltPack.Adapted(Three, "class.md", "period: 100 min")),
        ["high and warm"] = new(() =>
            BuiltPack.Adapted(
                Three,
                "class.md",
                "altitude: 2400 m",
                "kitchen temperature: 27 °C",
                "refrigerator: 3 °C",
                "teams: 5",
                "ovens: 2",
                "units: us"
            )
        ),
        ["by the clock, adjusted"] = new(() =>
            BuiltPack.Adapted(
                Quick,
                "mountain-class.md",
                "starts: 09:30",
                "altitude: 1609 m",
                "altitude formulas: adjusted",
                "teams: 6",
                "students: 24",
                "ovens: 2",
                "oven places: 6",
                "period: 150 min"
            )
        ),
        ["at the sea"] = new(() =>
            BuiltPack.Adapted(
                Quick,
                "mountain-class.md",
                "altitude: 5 m",
                "teams: 3",
                "students: 12",
                "ovens: 1",
                "oven places: 6",
                "period: 180 min",
                "refrigerator: 5 °C"
            )
        ),
    };

    public static TheoryData<string> All => [.. Known.Keys];

    public static TheoryData<string> OfThreeLifts => ["demo", "cool kitchen", "one oven, two teams", "high and warm"];

    public static BuiltPack Of(string name) => Known[name].Value;
}
