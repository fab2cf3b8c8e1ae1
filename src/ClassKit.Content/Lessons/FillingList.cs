using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads what goes into a piece besides its dough: <c>| Apricot jam | 15 g a piece |</c>.</summary>
internal static partial class FillingList
{
    /// <summary>The section's heading; it may be left out where nothing is filled.</summary>
    public const string Heading = "Filling";

    /// <summary>What each of them is for, as cards and lists say it.</summary>
    private const string For = "the filling";

    private static readonly string[] Columns = ["Ingredient", "Amount"];

    public static IReadOnlyList<SurfaceIngredient> Read(Section? section, ProblemList problems)
    {
        var filling = new List<SurfaceIngredient>();
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            var ingredient = row.Required("Ingredient", problems) is { } name ? KnownIngredient.AsWritten(name, problems) : null;
            var amount = row.Required("Amount", problems);
            if (ingredient is null || amount is null)
                continue;
            var match = Shape().Match(amount.Value.Text);
            if (!match.Success)
                problems.Add(
                    amount.Value.Line,
                    $"The amount is `{amount.Value.Text}`",
                    "Write how much of it goes into one piece: `15 g a piece`."
                );
            else if (
                Dimensions.Mass.Read(amount.Value with { Text = match.Groups["mass"].Value }, "The amount", Bounds.AboveZero, problems) is
                { } mass
            )
                filling.Add(new(ingredient, mass, SurfaceShare.Piece, For) { IsFilling = true });
        }
        return filling;
    }

    [GeneratedRegex(@"^(?<mass>.*\S)\s+(a|per|each)\s+piece$", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
