using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Classes;

namespace ClassKit.Content.Classes;

/// <summary>Reads what a kitchen has: <c>[6 burners, 2 mixers, 2 steamers of 3 places of 28 cm hot in 10 min]</c>.</summary>
internal static partial class EquipmentList
{
    public static (IReadOnlyList<EquipmentCount> Counts, IReadOnlyDictionary<EquipmentKind, Appliance> Appliances) Read(
        IEnumerable<string> items,
        int? line,
        ProblemList problems
    )
    {
        var appliances = new Dictionary<EquipmentKind, Appliance>();
        var counts = new List<EquipmentCount>();
        foreach (var item in items)
        {
            var match = CountAndName().Match(item);
            if (!match.Success)
                problems.Add(
                    line,
                    $"`equipment` holds `{item}`",
                    "Write how many of what: `equipment: [6 burners, 2 mixers]`; of what takes several loads at once and heats up also that: `2 steamers of 3 places hot in 10 min`, and of a steamer how wide its baskets are: `2 steamers of 3 places of 28 cm`."
                );
            else if (EquipmentKind.Find(match.Groups["name"].Value) is not { } kind)
                problems.Add(
                    line,
                    $"`{match.Groups["name"].Value}` is not equipment that is known here",
                    NearestWord.Advice(match.Groups["name"].Value, [.. EquipmentKind.All.Select(known => known.Many)])
                );
            else if (counts.Exists(count => count.Kind == kind))
                problems.Add(line, $"`equipment` counts the {kind.Many} a second time", "Put both into one number.");
            else
            {
                var count = Whole(match.Groups["count"])!.Value;
                counts.Add(new(kind, count));
                if (match.Groups["across"].Success && kind != EquipmentKind.Steamer)
                    problems.Add(
                        line,
                        $"`equipment` says how wide a place is of {kind.Many}: `{item}`",
                        "Only a steamer's round baskets are filled by their width: leave it out."
                    );
                appliances[kind] = new(count, Math.Max(1, Whole(match.Groups["places"]) ?? 1), Whole(match.Groups["minutes"]))
                {
                    PlaceMillimetres = Across(match),
                };
            }
        }
        return (counts, appliances);
    }

    private const double MillimetresPerInch = 25.4;

    private static double? Across(Match match) =>
        Whole(match.Groups["across"]) is { } across
            ? across * (match.Groups["unit"].Value.Equals("cm", StringComparison.OrdinalIgnoreCase) ? 10 : MillimetresPerInch)
            : null;

    private static int? Whole(Group digits) => digits.Success ? int.Parse(digits.Value, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(
        @"^(?<count>[0-9]{1,4})\s+(?<name>\S.*?)(\s+of\s+(?<places>[0-9]{1,3})\s+places?(\s+of\s+(?<across>[1-9][0-9]{0,2})\s*(?<unit>cm|in))?)?(\s+hot\s+in\s+(?<minutes>[0-9]{1,3})\s*min)?$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex CountAndName();
}
