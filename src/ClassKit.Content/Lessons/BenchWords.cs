using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Content.Lessons;

/// <summary>What the brackets of steps and of demonstrations have in common.</summary>
internal static partial class BenchWords
{
    public const string DoorShut = "door shut";

    /// <summary>Equipment that may be named, for advice.</summary>
    public static IReadOnlyList<string> Equipment { get; } =
    [.. EquipmentKind.All.Select(kind => kind.One), .. EquipmentKind.All.Select(kind => kind.Many)];

    /// <summary>What stands behind the word <c>oven</c>; null where that does not come first.</summary>
    public static string? OvenAt(string condition) => Oven().Match(condition) is { Success: true } oven ? oven.Groups["heat"].Value : null;

    /// <summary>
    /// Something that cooks, an oven or another: <c>fryer 180 °C</c>, <c>steamer</c>, with what stands behind it. Null where none is named,
    /// or where one that has a heat is named without it: then it is only occupied.
    /// </summary>
    public static (CookingPlace Place, string? Heat)? Cooking(string condition)
    {
        foreach (var place in CookingPlace.All)
        {
            if (!place.HasHeat && condition.Equals(place.Name, StringComparison.OrdinalIgnoreCase))
                return (place, null);
            if (
                condition.StartsWith(place.Name + " ", StringComparison.OrdinalIgnoreCase)
                && condition[(place.Name.Length + 1)..].Trim() is var heat
                && !heat.StartsWith("place", StringComparison.OrdinalIgnoreCase)
            )
                return (place, heat);
        }
        return null;
    }

    /// <summary>How each that cooks is written, for advice.</summary>
    public static IReadOnlyList<string> CookingExamples { get; } =
    [.. CookingPlace.All.Select(place => place.HasHeat ? $"{place.Name} {UsualHeat(place)}" : place.Name)];

    private static string UsualHeat(CookingPlace place) =>
        place.Name switch
        {
            "pizza oven" => "400 °C",
            "griddle" or "pan" => "230 °C",
            "fryer" => "180 °C",
            _ => "190 °C",
        };

    /// <summary>A thing with its count, 1 where there is none: <c>2 mixers</c>, <c>burner</c>.</summary>
    public static (int Count, string What)? Counted(string condition) =>
        Thing().Match(condition) is { Success: true } thing
            ? (
                thing.Groups["count"] is { Success: true } count ? int.Parse(count.Value, CultureInfo.InvariantCulture) : 1,
                thing.Groups["what"].Value
            )
            : null;

    [GeneratedRegex(@"^oven\s+(?<heat>\S.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Oven();

    /// <summary>A word of three letters or more, with a count before it or not; units of temperature are shorter.</summary>
    [GeneratedRegex(@"^((?<count>[0-9]{1,3})\s+)?(?<what>[A-Za-z][A-Za-z ]{2,})$")]
    private static partial Regex Thing();
}
