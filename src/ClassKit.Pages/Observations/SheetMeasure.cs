using ClassKit.Lessons.Authored;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Observations;

/// <summary>One row of an observation sheet: what is measured, of which of its breads.</summary>
/// <param name="Measure">What.</param>
/// <param name="Name">As those breads call it: one that no oven bakes has no bake loss.</param>
/// <param name="Of">The breads of which it is measured, with what a difference asks.</param>
public sealed record SheetMeasure(Measure Measure, string Name, IReadOnlyList<(SheetBread Bread, Observation Observed)> Of)
{
    /// <summary>The rows of a sheet, in the order in which its breads first name them.</summary>
    /// <param name="breads">The sheet's breads.</param>
    public static IReadOnlyList<SheetMeasure> All(IReadOnlyList<SheetBread> breads) =>
        [
            .. breads
                .SelectMany(bread => bread.Bread.Observations.Select(observed => (bread, observed)))
                .GroupBy(each => (each.observed.Measure, Name: MeasureText.Of(each.observed.Measure, each.bread.Bread)))
                .Select(row => new SheetMeasure(row.Key.Measure, row.Key.Name, [.. row])),
        ];

    /// <summary>How it is worked out, where no instrument shows it; empty otherwise.</summary>
    public string Rule => Measure == Measure.BakeLoss ? "(before − after) ÷ before × 100" : "";

    /// <summary>True if it is measured of a bread.</summary>
    public bool IsOf(SheetBread bread) => Of.Any(each => each.Bread == bread);

    /// <summary>What a difference asks: each question once, with the breads that it is asked of where they are not all.</summary>
    /// <param name="question">Of an observation, as the class reads it.</param>
    public IReadOnlyList<(IReadOnlyList<string> Breads, string Question)> Asks(Func<Observation, string> question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var asked = Of.GroupBy(each => question(each.Observed), StringComparer.Ordinal).ToList();
        return
        [
            .. asked.Select(each =>
                ((IReadOnlyList<string>)(asked.Count == 1 ? [] : [.. each.Select(of => of.Bread.Bread.Formula.Title)]), each.Key)
            ),
        ];
    }
}
