using ClassKit.Content.Diagnostics;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Finds a step of a bread by both names.</summary>
internal static class BreadStep
{
    /// <summary>The bread's id and the step's name, or null with the reason noted.</summary>
    /// <param name="bread">The bread's title.</param>
    /// <param name="step">The step's name.</param>
    /// <param name="line">Where they stand.</param>
    /// <param name="formulas">The lesson's breads, as many as could be read.</param>
    /// <param name="allRead">False if some bread could not be read; then none is called unknown.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static (string FormulaId, string StepName)? Find(
        string bread,
        string step,
        int line,
        IReadOnlyList<LessonFormula> formulas,
        bool allRead,
        ProblemList problems
    )
    {
        if (Bread(bread, line, formulas, allRead, problems) is not { } found)
            return null;
        if (found.Steps.FirstOrDefault(known => known.Name.Equals(step, StringComparison.OrdinalIgnoreCase)) is { } known)
            return (found.Formula.Id, known.Name);
        problems.Add(
            line,
            $"{found.Formula.Title} has no step `{step}`",
            NearestWord.Advice(step, [.. found.Steps.Select(known => known.Name)])
        );
        return null;
    }

    /// <summary>The bread of a title, or null with the reason noted; nothing is noted where some bread could not be read.</summary>
    public static LessonFormula? Bread(string title, int line, IReadOnlyList<LessonFormula> formulas, bool allRead, ProblemList problems)
    {
        var found = formulas.FirstOrDefault(formula => formula.Formula.Title.Equals(title, StringComparison.OrdinalIgnoreCase));
        if (found is null && allRead)
            problems.Add(
                line,
                $"`{title}` is not a bread of this lesson",
                NearestWord.Advice(title, [.. formulas.Select(formula => formula.Formula.Title)])
            );
        return found;
    }
}
