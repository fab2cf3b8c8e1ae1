using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;

namespace ClassKit.Desk.Kitchen;

/// <summary>What is wrong with a list that was pasted, by the lines of what was pasted: nobody has seen the table that was made of it.</summary>
internal static partial class PastedLines
{
    /// <summary>The same problems.</summary>
    /// <param name="problems">By the lines of the table.</param>
    /// <param name="table">What was made of it: the same lines, and perhaps a heading above them.</param>
    /// <param name="pasted">As it was pasted.</param>
    public static IReadOnlyList<Diagnostic> Of(IReadOnlyList<Diagnostic> problems, string table, string pasted)
    {
        var lines = pasted.Split('\n').Index().Where(line => line.Item.Trim().Length > 0).ToList();
        var heading = table.Split('\n').Count(line => line.Trim().Length > 0) - lines.Count;
        return
        [
            .. problems.Select(problem =>
                problem.Line is not { } line || line - 1 - heading is not (>= 0 and var at) || at >= lines.Count
                    ? problem with
                    {
                        File = "",
                        Line = null,
                    }
                    : problem with
                    {
                        File = "",
                        Line = null,
                        Found = string.Create(
                            CultureInfo.InvariantCulture,
                            $"Line {lines[at].Index + 1} of what you pasted, “{Plain(lines[at].Item)}”: {Others().Replace(problem.Found, Named)}"
                        ),
                    }
            ),
        ];

        // What is said of a line may name another one.
        string Named(Match other) =>
            int.Parse(other.Groups["line"].Value, CultureInfo.InvariantCulture) - 1 - heading is >= 0 and var at && at < lines.Count
                ? string.Create(CultureInfo.InvariantCulture, $"line {lines[at].Index + 1}")
                : other.Value;
    }

    [GeneratedRegex(@"\bline (?<line>[0-9]{1,6})\b", RegexOptions.ExplicitCapture)]
    private static partial Regex Others();

    private static string Plain(string line) =>
        string.Join(", ", line.Split('\t', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
}
