using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Rubrics;

/// <summary>Reads what must be passed whatever the average: a category, or behind a colon a criterion of its practical rubric.</summary>
internal static class PassLineTable
{
    private static readonly string[] Columns = ["What", "At least", "Otherwise at most"];
    private static readonly Bounds Shares = new(0, false, 100);

    public static IReadOnlyList<PassLine> Read(Section? section, IReadOnlyList<Category> categories, GradeScale scale, ProblemList problems)
    {
        List<PassLine> lines = [];
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            var what = row.Required("What", problems) is { } named ? What(named, categories, problems) : null;
            var least = row.Required("At least", problems) is { } text
                ? Dimensions.Percent.Read(text, "`At least`", Shares, problems)
                : null;
            var place = row.Required("Otherwise at most", problems) is { } grade ? Place(grade, scale, problems) : null;
            if (what is not var (category, criterion) || least is null || place is null)
                continue;
            if (lines.Exists(line => (line.Category, line.Criterion) == (category, criterion)))
                problems.Add(row.Line, "The same must be passed in a row above already", "Keep one of them.");
            lines.Add(new(category, criterion, (decimal)least, place.Value));
        }
        return lines;
    }

    private static (string Category, string? Criterion)? What(Located named, IReadOnlyList<Category> categories, ProblemList problems)
    {
        var pieces = named.Text.Split(':', 2, StringSplitOptions.TrimEntries);
        if (categories.FirstOrDefault(category => category.Name.Equals(pieces[0], StringComparison.OrdinalIgnoreCase)) is { } found)
        {
            if (pieces is not [_, ""])
                return (found.Name, pieces.ElementAtOrDefault(1));
            problems.Add(
                named.Line,
                $"`{named.Text}` names no criterion behind the colon",
                "Name one of the practical rubric, or leave the colon out."
            );
        }
        else if (categories.Count > 0)
            problems.Add(
                named.Line,
                $"`{pieces[0]}` is no category of this grade",
                NearestWord.Advice(pieces[0], [.. categories.Select(category => category.Name)])
            );
        return null;
    }

    private static int? Place(Located grade, GradeScale scale, ProblemList problems)
    {
        var grades = scale.Steps.Select(step => step.Grade).ToList();
        var place = grades.FindIndex(known => known.Equals(grade.Text, StringComparison.OrdinalIgnoreCase));
        if (place >= 0 && place < grades.Count - 1)
            return place;
        if (place >= 0)
            problems.Add(
                grade.Line,
                $"`{grade.Text}` is the highest grade, so that nothing is held back",
                "Name the highest grade that a student can have who does not pass this."
            );
        else if (grades.Count > 0)
            problems.Add(grade.Line, $"`{grade.Text}` is no grade of the scale", NearestWord.Advice(grade.Text, grades));
        return null;
    }
}
