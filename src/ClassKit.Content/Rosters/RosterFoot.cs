using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Sheets;

namespace ClassKit.Content.Rosters;

/// <summary>Lines below the students that programs put there: how many there are, when the list was printed, that it ends.</summary>
internal static partial class RosterFoot
{
    /// <summary>How many lines at the end are no students'.</summary>
    public static int Count(IReadOnlyList<CsvRecord> lines) => lines.Reverse().TakeWhile(IsFoot).Count();

    /// <summary>What stands in a line, its cells apart.</summary>
    public static string Text(CsvRecord line) => string.Join(" ", Cells(line));

    /// <summary>One cell says what is counted or when; whatever else stands there is a number or a date.</summary>
    private static bool IsFoot(CsvRecord line)
    {
        var cells = Cells(line).ToList();
        return cells.Count > 0
            && cells.Exists(cell => Words().IsMatch(cell))
            && cells.TrueForAll(cell => Words().IsMatch(cell) || IsNumberOrDate(cell));
    }

    private static bool IsNumberOrDate(string cell) =>
        decimal.TryParse(cell, NumberStyles.Number, CultureInfo.InvariantCulture, out _)
        || DateTime.TryParse(cell, CultureInfo.InvariantCulture, out _);

    private static IEnumerable<string> Cells(CsvRecord line) => line.Fields.Select(field => field.Trim()).Where(field => field.Length > 0);

    [GeneratedRegex(
        """
            ^(
              (grand\ |sub)?totals?(\ (number\ of|no\.?\ of))?(\ (students|pupils|learners|participants|names|enrol+ed|enrol+ments?|records|rows|count))?\s*[:=]?\s*\d*
            | (number|no\.?|count|sum)\ of\ (students|pupils|learners|participants|names|enrol+ments?|records|rows)\s*[:=]?\s*\d*
            | (students|pupils|learners|participants|records|rows|enrol+ed|class\ size|count|sum)\s*[:=]\s*\d*
            | \d+\ (students|pupils|learners|participants|names|records|rows)(\ (in\ total|enrol+ed))?
            | (printed|generated|exported|created|downloaded)(\ (on|at))?\s*:?\s*\d[\d\s.:/TZ+-]*(am|pm)?
            | -*\s*end\ of\ (the\ )?(list|report|class\ list|roster|file)\s*-*
            )\.?$
            """,
        RegexOptions.IgnoreCase | RegexOptions.IgnorePatternWhitespace | RegexOptions.CultureInvariant
    )]
    private static partial Regex Words();
}
