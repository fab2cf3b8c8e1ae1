using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Wording;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Work;

namespace ClassKit.Content.Terms;

/// <summary>
/// Reads one typed mark: points, points of a smaller total as in <c>8 of 10</c>, either with <c>late</c> behind it, or a word.
/// </summary>
internal static partial class MarkCell
{
    private const string Late = "late";
    private const string Of = " of ";
    private static readonly Dictionary<string, Mark> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["absent"] = Mark.Absent,
        ["excused"] = Mark.Excused,
        ["not due"] = Mark.NotDue,
    };

    /// <param name="cell">What was typed.</param>
    /// <param name="who">Of whom it is, as messages say it.</param>
    /// <param name="work">The work.</param>
    /// <param name="separator">What keeps the table's fields apart.</param>
    /// <param name="line">Where it stands.</param>
    /// <param name="problems">Gathers what is wrong.</param>
    public static Mark? Read(string cell, string who, PlannedWork work, char separator, int line, ProblemList problems)
    {
        if (Words.TryGetValue(cell, out var word))
            return word;
        var isLate = cell.EndsWith(Late, StringComparison.OrdinalIgnoreCase);
        var number = isLate ? cell[..^Late.Length].TrimEnd(' ', ',') : cell;

        // Where fields are kept apart by something else than the comma, the comma is the decimal sign; between quotes, where one or two
        // digits follow it.
        bool IsNumber(string text, out decimal value) =>
            Number.TryParse(separator == ',' && !DecimalComma().IsMatch(text) ? text : text.Replace(',', '.'), out value);
        var at = number.IndexOf(Of, StringComparison.OrdinalIgnoreCase);
        decimal? own = null;
        if (at >= 0 && IsNumber(number[(at + Of.Length)..].Trim(), out var total))
            (own, number) = (total, number[..at].TrimEnd());
        if (!IsNumber(number, out var points))
            problems.Add(
                line,
                $"{who}: `{work.Title}` has the mark `{cell}`",
                $"{(NearestWord.To(cell, Words.Keys) is { } near ? $"Did you mean `{near}`? " : "")}Write points, points and `late`, or one of {string.Join(", ", Words.Keys)}; `8 of 10` where a student was asked less than the others; an empty cell is no mark yet."
            );
        else if (work.OutOf is not { } outOf || work.Kind == WorkKind.BenchWork)
            problems.Add(
                line,
                $"{who}: `{work.Title}` has typed points, and its marks come from {(work.Kind == WorkKind.BenchWork ? "the bench" : "a graded folder")}",
                "Write only absent, excused or not due here; points are corrected where they come from."
            );
        else if (own is <= 0 || own > outOf)
            problems.Add(
                line,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{who}: `{work.Title}` has a mark of {own:0.####} points, and it is out of {outOf:0.####}"
                ),
                "Behind `of` stands what this student could earn, above 0 and at most what everybody can."
            );
        else if (points < 0 || points > (own ?? outOf))
            problems.Add(
                line,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{who}: `{work.Title}` has the mark {points:0.####}, and it is out of {own ?? outOf:0.####}"
                ),
                "Write the points earned, from 0 to what is possible."
            );
        else
            return Mark.Of(points, own ?? outOf) with { Lateness = isLate ? Lateness.Late : Lateness.InTime };
        return null;
    }

    /// <summary>With three digits behind it the comma may stand for thousands.</summary>
    [GeneratedRegex(@"\A[0-9]+,[0-9]{1,2}\z", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();
}
