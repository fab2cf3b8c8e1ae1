using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Classes;

/// <summary>Reads what a kitchen has: <c>[6 burners, 2 mixers]</c>.</summary>
internal static partial class EquipmentList
{
    public static IReadOnlyList<EquipmentCount> Read(IEnumerable<string> items, int? line, ProblemList problems)
    {
        var counts = new List<EquipmentCount>();
        foreach (var item in items)
        {
            var match = CountAndName().Match(item);
            if (!match.Success)
                problems.Add(line, $"`equipment` holds `{item}`", "Write how many of what: `equipment: [6 burners, 2 mixers]`.");
            else if (EquipmentKind.Find(match.Groups["name"].Value) is not { } kind)
                problems.Add(line, $"`{match.Groups["name"].Value}` is not equipment that is known here", NearestWord.Advice(match.Groups["name"].Value, [.. EquipmentKind.All.Select(known => known.Many)]));
            else if (counts.Exists(count => count.Kind == kind))
                problems.Add(line, $"`equipment` counts the {kind.Many} a second time", "Put both into one number.");
            else
                counts.Add(new(kind, int.Parse(match.Groups["count"].Value, CultureInfo.InvariantCulture)));
        }
        return counts;
    }

    [GeneratedRegex(@"^(?<count>[0-9]{1,4})\s+(?<name>\S.*)$")]
    private static partial Regex CountAndName();
}
