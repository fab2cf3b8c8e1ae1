using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Wording;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Work;

namespace ClassKit.Content.Terms;

/// <summary>Reads one typed mark: points, points and <c>late</c>, or a word.</summary>
internal static class MarkCell
{
    private const string Late = "late";
    private static readonly Dictionary<string, Mark> Words = new(StringComparer.OrdinalIgnoreCase) { ["absent"] = Mark.Absent, ["excused"] = Mark.Excused, ["not due"] = Mark.NotDue };

    public static Mark? Read(string cell, PlannedWork work, char separator, int line, ProblemList problems)
    {
        if (Words.TryGetValue(cell, out var word)) return word;
        var isLate = cell.EndsWith(Late, StringComparison.OrdinalIgnoreCase);
        var number = isLate ? cell[..^Late.Length].TrimEnd(' ', ',') : cell;

        // Where fields are kept apart by something else than the comma, the comma is the decimal sign.
        if (!Number.TryParse(separator == ',' ? number : number.Replace(',', '.'), out var points))
            problems.Add(line, $"`{work.Title}` has the mark `{cell}`", $"{(NearestWord.To(cell, Words.Keys) is { } near ? $"Did you mean `{near}`? " : "")}Write points, points and `late`, or one of {string.Join(", ", Words.Keys)}; an empty cell is no mark yet.");
        else if (work.OutOf is not { } outOf || work.Kind == WorkKind.BenchWork)
            problems.Add(line, $"`{work.Title}` has typed points, and its marks come from {(work.Kind == WorkKind.BenchWork ? "the bench" : "a graded folder")}", "Write only absent, excused or not due here; points are corrected where they come from.");
        else if (points < 0 || points > outOf)
            problems.Add(line, string.Create(CultureInfo.InvariantCulture, $"`{work.Title}` has the mark {points:0.####}, and it is out of {outOf:0.####}"), "Write the points earned, from 0 to what is possible.");
        else
            return Mark.Of(points, outOf) with { Lateness = isLate ? Lateness.Late : Lateness.InTime };
        return null;
    }
}
