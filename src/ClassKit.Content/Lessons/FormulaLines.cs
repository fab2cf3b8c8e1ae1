using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the table of a baker's formula.</summary>
internal static class FormulaLines
{
    private static readonly string[] Columns = ["Ingredient", "%"];

    /// <summary>As far as percentages with a few decimals can miss 100 by binary fractions.</summary>
    private const double Slack = 1e-9;

    public static IReadOnlyList<FormulaLine> Read(Section? section, ProblemList problems)
    {
        var before = problems.Count;
        var lines = new List<FormulaLine>();
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            var ingredient = row.Required("Ingredient", problems) is { } name ? KnownIngredient.AsWritten(name, problems) : null;
            var percent = row.Required("%", problems) is { } text ? Percent(text, problems) : null;
            if (ingredient is not null && percent is { } share)
            {
                UnusualShare.Note(ingredient, share, row.Line, problems);
                lines.Add(new(ingredient, share));
            }
        }
        // An ingredient that was not understood may have been the flour: one message is enough then.
        if (section is not null && problems.Count == before && !problems.IsBeneathBroken)
        {
            CheckFlour(lines, section.Line, problems);
            DryDough.Note(lines, section.Line, problems);
        }
        return lines;
    }

    private static void CheckFlour(List<FormulaLine> lines, int line, ProblemList problems)
    {
        var flours = lines.Where(formulaLine => formulaLine.Ingredient.Role == IngredientRole.Flour).ToList();
        var fermented = lines.Sum(starter => starter.Ingredient.StarterFlourShare * starter.Percent);
        var sum = flours.Sum(flour => flour.Percent) + fermented;
        if (flours.Count == 0)
            problems.Add(line, "The formula has no flour", "Baker's percentages are shares of the flour: add it, at 100 % all together.");
        else if (Math.Abs(sum - 100) > Slack)
            problems.Add(
                line,
                FormattableString.Invariant($"The flour adds up to {Math.Round(sum, 2, MidpointRounding.AwayFromZero)} %"),
                fermented > 0
                    ? FormattableString.Invariant(
                        $"All flour together is 100 %, and {Math.Round(fermented, 2, MidpointRounding.AwayFromZero)} % of it is in the starter: correct the percentages."
                    )
                    : "All flour together is 100 %: correct the percentages." + NotCounted(lines)
            );
    }

    /// <summary>What its bag calls flour and bakers do not count as such: it brings neither gluten nor starch that sets a crumb.</summary>
    private static string NotCounted(List<FormulaLine> lines)
    {
        var called = lines
            .Where(line =>
                line.Ingredient.Role != IngredientRole.Flour
                && line.Ingredient.OtherNames.Append(line.Ingredient.Name)
                    .Any(name => name.EndsWith("flour", StringComparison.OrdinalIgnoreCase))
            )
            .Select(line =>
                FormattableString.Invariant($"{line.Ingredient.Name} ({Math.Round(line.Percent, 2, MidpointRounding.AwayFromZero)} %)")
            )
            .ToList();
        return called.Count == 0 ? "" : $" Not counted as flour: {string.Join(", ", called)}.";
    }

    private static double? Percent(Located text, ProblemList problems) =>
        Number.Read(text with { Text = text.Text.TrimEnd('%').TrimEnd() }, "The percentage", Bounds.AboveZero, problems);
}
