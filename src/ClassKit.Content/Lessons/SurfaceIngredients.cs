using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads what touches a bread beside its formula: <c>| Vegetable oil (canola) | 5 g a tin | brushing the cups |</c>.</summary>
internal static partial class SurfaceIngredients
{
    /// <summary>The section's heading; it may be left out where nothing is greased, dusted or glazed.</summary>
    public const string Heading = "Greasing and dusting";

    private static readonly string[] Columns = ["Ingredient", "Amount", "For"];

    private static readonly Dictionary<string, SurfaceShare> Shares = new(StringComparer.OrdinalIgnoreCase)
    {
        ["batch"] = SurfaceShare.Batch,
        ["piece"] = SurfaceShare.Piece,
        ["tin"] = SurfaceShare.Tin,
        ["fryer"] = SurfaceShare.Fryer,
    };

    public static IReadOnlyList<SurfaceIngredient> Read(
        Section? section,
        LessonTexts texts,
        IReadOnlyList<BenchTool> equipment,
        ProblemList problems
    )
    {
        var surfaces = new List<SurfaceIngredient>();
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            var ingredient = row.Required("Ingredient", problems) is { } name ? KnownIngredient.AsWritten(name, problems) : null;
            var amount = row.Required("Amount", problems);
            var use = row.Required("For", problems);
            if (ingredient is null || amount is null || use is null || Amount(amount.Value, equipment, problems) is not var (mass, each))
                continue;
            surfaces.Add(new(ingredient, mass, each, texts.Read(use.Value)));
        }
        return surfaces;
    }

    private static (Baking.Quantities.Mass Mass, SurfaceShare Each)? Amount(
        Located text,
        IReadOnlyList<BenchTool> equipment,
        ProblemList problems
    )
    {
        var match = Shape().Match(text.Text);
        if (!match.Success || !Shares.TryGetValue(match.Groups["each"].Value, out var each))
        {
            problems.Add(
                text.Line,
                $"The amount is `{text.Text}`",
                "Write how much for what: `5 g a tin`, `1 g a piece`, `10 g a batch` or, of the fat to fry in, `1500 g a fryer`."
            );
            return null;
        }
        if (each == SurfaceShare.Tin && !equipment.Any(tool => tool.IsTin))
            problems.Add(
                text.Line,
                "The amount is for each tin, and the equipment has none",
                "List the tins or baking trays under `## Equipment`, or write the amount for a piece or a batch."
            );
        return Dimensions.Mass.Read(text with { Text = match.Groups["mass"].Value }, "The amount", Bounds.AboveZero, problems) is { } mass
            ? (mass, each)
            : null;
    }

    [GeneratedRegex(@"^(?<mass>.*\S)\s+(a|per|each)\s+(?<each>\w+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
