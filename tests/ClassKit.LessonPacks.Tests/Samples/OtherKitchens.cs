using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Samples;

/// <summary>Every shipped lesson in kitchens that are not the shipped ones: low, at 900 m and high, cool, usual and hot.</summary>
internal static class OtherKitchens
{
    private static readonly Dictionary<string, string> Classes = new()
    {
        ["one-tin-three-lifts"] = "class.md",
        ["thin-air-quick-breads"] = "mountain-class.md",
        ["no-oven-in-the-house"] = "no-oven-class.md",
        ["one-dough-three-clocks"] = "long-morning-class.md",
    };

    /// <summary>The shipped lessons, each by its folder.</summary>
    public static IEnumerable<string> Lessons => Classes.Keys;

    /// <summary>Each lesson with a height in metres and a room in degrees Celsius.</summary>
    public static TheoryData<string, int, int> All
    {
        get
        {
            TheoryData<string, int, int> all = [];
            foreach (var lesson in Classes.Keys)
            foreach (var metres in (int[])[0, 900, 1600])
            foreach (var room in (int[])[17, 21, 31])
                all.Add(lesson, metres, room);
            return all;
        }
    }

    public static BuiltPack NoOvenHigh { get; } =
        BuiltPack.Adapted("no-oven-in-the-house", "no-oven-class.md", "altitude: 1600 m", "kitchen temperature: 19 °C");

    public static BuiltPack NoOvenHighAdjusted { get; } =
        BuiltPack.Adapted("no-oven-in-the-house", "no-oven-class.md", "altitude: 1600 m", "altitude formulas: adjusted");

    public static BuiltPack LongMorningHigh { get; } =
        BuiltPack.Adapted("one-dough-three-clocks", "long-morning-class.md", "altitude: 1600 m", "kitchen temperature: 17 °C");

    public static BuiltPack QuickBreadsLow { get; } = BuiltPack.Adapted("thin-air-quick-breads", "mountain-class.md", "altitude: 0 m");

    public static BuiltPack HotKitchen { get; } =
        BuiltPack.Adapted("one-tin-three-lifts", "class.md", "altitude: 0 m", "kitchen temperature: 31 °C", "units: us");

    /// <summary>What is computed, without a bench plan.</summary>
    public static ComputedPack Computed(string lesson, int metres, int room)
    {
        var profile = ClassProfileReader.Read(Repository.PathOf("demo-cohort", Classes[lesson])).Model!;
        return ComputedPack
            .Build(
                LessonReader.Read(Repository.PathOf("lessons", lesson)).Model!,
                profile with
                {
                    AltitudeMetres = metres,
                    KitchenTemperature = Baking.Quantities.Temperature.FromCelsius(room),
                }
            )
            .Value;
    }
}
