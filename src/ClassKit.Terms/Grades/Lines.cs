using ClassKit.Exercises.Authoring;
using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Grades;

/// <summary>Holds a student's work against what must be passed.</summary>
internal static class Lines
{
    public static LineResult Settle(PassLine line, IReadOnlyList<CategoryResult> categories, ResitChoice choice)
    {
        var category = categories.First(category => category.Category.Name == line.Category);
        var share = line.Criterion is { } criterion ? CriterionShares.Mean(category, criterion, choice) : category.Share;
        return new(
            line,
            share,
            share is not { } reached ? LineState.Open
                : Rounding.Compared(Unit.Percent.Shown(reached)) >= line.AtLeast ? LineState.Passed
                : LineState.Missed
        );
    }
}
