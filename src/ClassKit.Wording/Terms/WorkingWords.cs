using ClassKit.Terms.Grades;
using ClassKit.Terms.Rules;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Terms;

/// <summary>How a grade came about, a sentence a step.</summary>
public static class WorkingWords
{
    /// <summary>The steps, from the marks to the grade.</summary>
    public static IEnumerable<string> Of(TermGrade grade, GradeRule rule)
    {
        ArgumentNullException.ThrowIfNull(grade);
        ArgumentNullException.ThrowIfNull(rule);
        foreach (var category in grade.Categories)
            yield return Category(category);
        if (grade is not { Percent: { } percent, Rounded: { } rounded, ByAverage: { } byAverage, Place: { } place })
        {
            yield return "Nothing counts yet, so that there is no grade.";
            yield break;
        }
        var counting = grade.Categories.Where(category => category.Share is not null).ToList();
        yield return $"Together {string.Join(" + ", counting.Select(category => $"{ShareWords.Of(category.WeightNow)} of {ShareWords.Of(category.Share!.Value)}"))} = {ShareWords.OfPercent(percent)}.";
        yield return Rounding(percent, rounded, rule.Rounding)
            + $" The scale calls that {Quoted(rule.Scale.Steps[byAverage])} (from {ShareWords.OfPercent(rule.Scale.Steps[byAverage].From)}).";
        foreach (var line in grade.Lines)
            yield return Line(line, rule.Scale);
        yield return $"The grade is {Quoted(rule.Scale.Steps[place])}{(grade.IsProvisional ? ", as far as there are marks" : "")}.";
    }

    private static string Category(CategoryResult result)
    {
        var weight = ShareWords.Of(result.Category.Weight);
        var others = result
            .Works.Where(work => work.Standing != Standing.Counts)
            .GroupBy(work => work.Standing)
            .Select(group =>
                $"{string.Join(", ", group.Select(work => work.Share is { } share ? $"{work.Assignment.Title} {ShareWords.Of(share)}" : work.Assignment.Title))} {WorkWords.Of(group.Key)}"
            )
            .ToList();
        var left = others.Count == 0 ? "" : $" ({string.Join("; ", others)})";
        if (result.Share is not { } reached)
            return $"{result.Category.Name}: nothing counts{left}; its weight of {weight} goes to the others.";
        var works = result.Works.Where(work => work.Standing == Standing.Counts).ToList();
        var mean =
            works.Count == 1
                ? ""
                : $"; the mean{(result.Category.Counting == CategoryCounting.ByPoints ? " by points" : "")} is {ShareWords.Of(reached)}";
        return $"{result.Category.Name}: {Phrases.List([.. works.Select(work => $"{work.Assignment.Title} {(work.Counted is null ? "absent, " : "")}{ShareWords.Of(work.Share!.Value)}")])}{mean}{left}.";
    }

    private static string Rounding(decimal percent, decimal rounded, Rounding rounding) =>
        rounding.Step is not { } step ? "It is not rounded."
        : rounding.IsTie(percent)
            ? $"That is the middle between two steps of {ShareWords.OfPercent(step)} and goes {GradeRuleWords.Of(rounding.Tie)}: {ShareWords.OfPercent(rounded)}."
        : $"Rounded to {ShareWords.OfPercent(step)}: {ShareWords.OfPercent(rounded)}.";

    private static string Line(LineResult line, GradeScale scale)
    {
        var asked = $"{line.Line.What} must reach {ShareWords.OfPercent(line.Line.AtLeast)}";
        return line.State switch
        {
            LineState.Passed => $"{asked}: {ShareWords.Of(line.Share!.Value)}, passed.",
            LineState.Missed =>
                $"{asked}: {ShareWords.Of(line.Share!.Value)}, missed, so that the grade is at most {Quoted(scale.Steps[line.Line.OtherwiseAtMost])}.",
            LineState.Open => $"{asked}: nothing was marked that could show it, and the grade is not final before something does.",
        };
    }

    private static string Quoted(ScaleStep step) => $"“{step.Grade}”";
}
