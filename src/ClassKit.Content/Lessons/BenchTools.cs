using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads what a bread needs at the bench: <c>- Cooling rack</c>, <c>- 2 × Mixing bowl</c>, <c>- Scale (shared)</c>.</summary>
internal static partial class BenchTools
{
    public static IReadOnlyList<BenchTool> Read(Section? section, ProblemList problems)
    {
        var tools = new List<BenchTool>();
        foreach (var entry in Lists.Entries(section, problems))
        {
            var match = Shape().Match(entry.Text.Text);
            var tool = new BenchTool(
                match.Groups["name"].Value,
                match.Groups["count"].Success ? int.Parse(match.Groups["count"].Value, CultureInfo.InvariantCulture) : 1,
                match.Groups["shared"].Success
            );
            if (tool.Count == 0)
                problems.Add(entry.Text.Line, $"`{tool.Name}` is needed 0 times", "Leave it out, or write how many: `2 × Mixing bowl`.");
            else if (tools.Exists(known => known.Name.Equals(tool.Name, StringComparison.OrdinalIgnoreCase)))
                problems.Add(entry.Text.Line, $"`{tool.Name}` is listed a second time", "Put both into one: `2 × Mixing bowl`.");
            else
                tools.Add(tool);
        }
        return tools;
    }

    [GeneratedRegex(@"^((?<count>[0-9]{1,2})\s*[×x]\s*)?(?<name>.+?)(\s*\((?<shared>shared)\))?$")]
    private static partial Regex Shape();
}
