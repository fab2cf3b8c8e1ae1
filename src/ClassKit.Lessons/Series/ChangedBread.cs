using System.Diagnostics;
using ClassKit.Baking.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Values;

namespace ClassKit.Lessons.Series;

/// <summary>A bread with what its series changes in it.</summary>
public static class ChangedBread
{
    /// <summary>What a stand between two steps is called.</summary>
    private const string Hold = "Hold";

    /// <summary>The bread of a series. Its texts name its own values, where it has them.</summary>
    /// <param name="bread">The bread as written.</param>
    /// <param name="member">What is other about it.</param>
    public static LessonFormula Of(LessonFormula bread, SeriesMember member)
    {
        ArgumentNullException.ThrowIfNull(bread);
        ArgumentNullException.ThrowIfNull(member);
        var changed = member.Changes.Aggregate(
            bread with
            {
                Formula = bread.Formula with { Id = member.Id, Title = $"{bread.Formula.Title}: {Small(member.Name)}" },
            },
            Apply
        );
        // What was left out is weighed as nothing, and so is still a value.
        var own = ValueNames
            .Of(changed)
            .Concat(member.Changes.OfType<SeriesChange.LeftOut>().Select(left => left.Ingredient.Id))
            .ToHashSet(StringComparer.Ordinal);
        return WithTexts(changed, text => text.Renamed(name => Own(name, bread.Formula.Id, member.Id, own)));
    }

    private static LessonFormula Apply(LessonFormula bread, SeriesChange change) =>
        change switch
        {
            SeriesChange.LeftOut left => bread with
            {
                Formula = bread.Formula with { Lines = [.. bread.Formula.Lines.Where(line => line.Ingredient.Id != left.Ingredient.Id)] },
            },
            SeriesChange.Share share => bread with { Formula = bread.Formula with { Lines = Shared(bread.Formula.Lines, share) } },
            SeriesChange.Weakened weak => bread with
            {
                Strengths = new Dictionary<string, double>(bread.Strengths) { [weak.Ingredient.Id] = weak.Strength },
            },
            SeriesChange.Aged => bread,
            SeriesChange.Timed timed => bread with
            {
                Steps =
                [
                    .. bread.Steps.Select(step =>
                        step.Name == timed.StepName ? step with { MinMinutes = timed.MinMinutes, MaxMinutes = timed.MaxMinutes } : step
                    ),
                ],
            },
            SeriesChange.Held held => bread with
            {
                Steps = [.. bread.Steps.SelectMany(step => step.Name == held.AfterStep ? [step, Stand(held)] : new[] { step })],
            },
            _ => throw new UnreachableException(change.GetType().Name),
        };

    private static IReadOnlyList<FormulaLine> Shared(IReadOnlyList<FormulaLine> lines, SeriesChange.Share share) =>
        lines.Any(line => line.Ingredient.Id == share.Ingredient.Id)
            ? [.. lines.Select(line => line.Ingredient.Id == share.Ingredient.Id ? line with { Percent = share.Percent } : line)]
            : [.. lines, new(share.Ingredient, share.Percent)];

    private static MethodStep Stand(SeriesChange.Held held) =>
        new(Hold, "Cover and wait.", held.Minutes, held.Minutes, null) { Work = StepWork.Usual with { People = 0 } };

    private static string Own(string name, string of, string id, HashSet<string> own) =>
        name.StartsWith(of + ".", StringComparison.Ordinal) && own.Contains(name[(of.Length + 1)..])
            ? $"{id}.{name[(of.Length + 1)..]}"
            : name;

    private static LessonFormula WithTexts(LessonFormula bread, Func<TextTemplate, TextTemplate> own) =>
        bread with
        {
            Why = own(bread.Why),
            Steps = [.. bread.Steps.Select(step => step with { Text = own(step.Text) })],
            Cautions = [.. bread.Cautions.Select(caution => caution with { Text = own(caution.Text) })],
            Notes = own(bread.Notes),
            Surfaces = [.. bread.Surfaces.Select(surface => surface with { For = own(surface.For) })],
            Observations =
            [
                .. bread.Observations.Select(observed => observed with { IfLess = own(observed.IfLess), IfMore = own(observed.IfMore) }),
            ],
            Traits = bread.Traits.With(own),
        };

    /// <summary>Behind a colon a sentence goes on; an abbreviation stays as it is.</summary>
    private static string Small(string name) =>
        name.Length > 1 && char.IsUpper(name[1]) ? name : char.ToLowerInvariant(name[0]) + name[1..];
}
