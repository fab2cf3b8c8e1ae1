using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Altitude;

/// <summary>A baker's formula changed for a high kitchen by a published table: a starting point for a trial.</summary>
/// <param name="Original">As written for sea level.</param>
/// <param name="Adjusted">With the chosen values, all flour again as 100 %.</param>
/// <param name="Lines">What was changed, with the range that is published.</param>
/// <param name="OvenWarmer">Degrees Fahrenheit more in the oven; null where nothing is changed.</param>
/// <param name="Table">The table used.</param>
/// <param name="Advice">What else changes with the altitude.</param>
/// <param name="Explanation">How it was computed.</param>
public sealed record AltitudeFormula(
    BakersFormula Original,
    BakersFormula Adjusted,
    IReadOnlyList<AdjustedLine> Lines,
    PublishedRange? OvenWarmer,
    AltitudeTable Table,
    IReadOnlyList<Advice> Advice,
    Explanation Explanation
) : IExplained
{
    /// <summary>
    /// Baker's percent of sugar below which a batter is no cake; cakes have 80 % and more, sweet muffins 20 to 50 %; common practice, no
    /// source.
    /// </summary>
    private const double LittleSugar = 15;

    /// <summary>The formula for a kitchen at an altitude.</summary>
    /// <param name="formula">As written for sea level.</param>
    /// <param name="metres">Above sea level, -500 m to 11 000 m.</param>
    /// <param name="table">Which table; the extension service's if not said.</param>
    /// <param name="place">Where in each range all lines are changed to: 0 is the least change, 1 the most. If not said, the first trial:
    /// the leavening alone, by the least that is published, to what a bench can weigh.</param>
    /// <param name="heats">What it is cooked in, one after the other; an oven if not said.</param>
    /// <param name="structure">What its gas blows up, where somebody says so.</param>
    /// <remarks>
    /// The tables are for cakes and quick breads from an oven. Yeast doughs and steam-raised batters keep their formula; the advice says
    /// what changes for them. A first trial leaves bread with next to no sugar as it is, too. That leavening comes first, and one change at
    /// a time: Colorado State University, news release of 12 December 2002.
    /// </remarks>
    public static Computed<AltitudeFormula> For(
        BakersFormula formula,
        double metres,
        AltitudeTable? table = null,
        double? place = null,
        IReadOnlyList<GivenHeat>? heats = null,
        CrumbStructure? structure = null
    )
    {
        ArgumentNullException.ThrowIfNull(formula);
        table ??= AltitudeTable.Extension;
        heats ??= GivenHeat.AnOven;
        if ((FormulaSanity.Of(formula) ?? Sanity.Number(place ?? 0, 0, 1, "Place in the range", "place-out-of-range")) is { } odd)
            return odd;
        return StandardAtmosphere
            .PressureAt(metres)
            .Then<AltitudeFormula>(pressure =>
            {
                var isTabled =
                    formula.Leavening == Leavening.Chemical && IsFromAnOven(heats) && (place is not null || !HasLittleSugar(formula));
                var row = isTabled ? table.For(metres) : null;
                // Line by line: an ingredient may stand in a formula twice, in the batter and on top of it.
                var changes = formula.Lines.Select(line => row is null ? null : Adjust(row, line, place)).ToList();
                List<AdjustedLine> lines = [.. changes.OfType<AdjustedLine>()];
                var chosen = formula.Lines.Zip(changes, (line, change) => change?.Chosen ?? line.Percent).ToList();
                var flour = formula.Lines.Zip(chosen).Sum(pair => pair.Second * pair.First.Ingredient.FlourShare);
                var adjusted = formula with
                {
                    Lines =
                    [
                        .. formula.Lines.Zip(chosen, (line, percent) => line with { Percent = percent * formula.FlourPercent / flour }),
                    ],
                };
                return new AltitudeFormula(
                    formula,
                    adjusted,
                    lines,
                    row?.OvenWarmer,
                    table,
                    [.. AdviceOn(formula, metres, pressure, row, heats, structure)],
                    Explain(formula, metres, lines, flour, row, table, adjusted, Untabled(formula, heats))
                );
            });
    }

    /// <summary>Null for what the table leaves alone.</summary>
    private static AdjustedLine? Adjust(AltitudeAdjustment row, FormulaLine line, double? place)
    {
        // From the least change to the most: less powder and sugar, more liquid and flour.
        (double Least, double Most)? change = line.Ingredient.Role switch
        {
            IngredientRole.ChemicalLeavening => (row.Leavening(line.Percent).High, row.Leavening(line.Percent).Low),
            IngredientRole.Sugar => (row.Sugar(line.Percent).High, row.Sugar(line.Percent).Low),
            IngredientRole.Liquid => (row.Liquid(line.Percent).Low, row.Liquid(line.Percent).High),
            IngredientRole.Flour => (row.Flour(line.Percent).Low, row.Flour(line.Percent).High),
            _ => null,
        };
        return change is { } found && (found.Least != line.Percent || found.Most != line.Percent)
            ? new(
                line.Ingredient,
                line.Percent,
                new(Math.Min(found.Least, found.Most), Math.Max(found.Least, found.Most)),
                place is { } share ? found.Least + (found.Most - found.Least) * share
                    : line.Ingredient.Role == IngredientRole.ChemicalLeavening ? Math.Round(found.Least, 1, MidpointRounding.AwayFromZero)
                    : line.Percent
            )
            : null;
    }

    private static bool HasLittleSugar(BakersFormula formula) =>
        formula.Lines.Where(line => line.Ingredient.Role == IngredientRole.Sugar).Sum(line => line.Percent) < LittleSugar;

    /// <summary>Where nobody says how it is cooked, nothing is known that speaks against an oven.</summary>
    private static bool IsFromAnOven(IReadOnlyList<GivenHeat> heats) => heats.Count == 0 || heats.Any(heat => HighCooking.IsOven(heat.Way));

    private static IEnumerable<Advice> AdviceOn(
        BakersFormula formula,
        double metres,
        Pressure pressure,
        AltitudeAdjustment? row,
        IReadOnlyList<GivenHeat> heats,
        CrumbStructure? structure
    )
    {
        if (metres < AltitudeTable.LowestMetres)
            yield break;
        if (Rising(formula, pressure) is { } rising)
            yield return rising;
        if (formula.Leavening == Leavening.Steam)
            yield return Boiling(pressure, IsFromAnOven(heats) && structure is not CrumbStructure.Pocket);
        foreach (var advice in heats.SelectMany(heat => HighCooking.AdviceOn(heat, metres, pressure)).DistinctBy(advice => advice.Message))
            yield return advice;
        if (formula.Leavening == Leavening.Chemical && !IsFromAnOven(heats))
            yield return new(
                "cakes-first",
                "The tables of ingredients were made for breads from an oven: its formula stays as written, and is judged from that.",
                "common practice, no source"
            );
        else if (formula.Leavening == Leavening.Chemical && HasLittleSugar(formula))
            yield return new(
                "cakes-first",
                "The tables were made for cakes. With so little sugar a crumb sets early: bake it as written, and judge from that.",
                "common practice, no source"
            );
        if (row is not null)
            yield return new(
                "try-first",
                "Tables disagree and every recipe differs: take the smallest published change of the leavening first, bake it, then change one thing at a time.",
                "Colorado State University, news release of 12 December 2002"
            );
    }

    /// <summary>What rises by yeast, from a packet or in a starter, is up sooner; null of anything else.</summary>
    private static Advice? Rising(BakersFormula formula, Pressure pressure)
    {
        var isOfYeast = formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Yeast);
        return !isOfYeast && !formula.Lines.Any(line => line.Ingredient.StarterOf is not null)
            ? null
            : new(
                "rises-sooner",
                $"The same gas takes {Figures.Show(Pressure.Standard.Pascals / pressure.Pascals)} times the room: a dough is up sooner. Go by its volume, not by the clock, and {(isOfYeast ? "use less yeast or a cooler place" : "find it a cooler place if it is too soon")}.",
                "pressure: US Standard Atmosphere 1976; The Seasoned Chef, \"High altitude baking\": judge rise by bulk, not by time"
            );
    }

    /// <summary>A shell must dry before it stands by itself; a pocket puffs and falls again.</summary>
    private static Advice Boiling(Pressure pressure, bool isShell)
    {
        var boils = $"Water boils at {Figures.Celsius(Saturation.BoilingPoint(pressure))}, so";
        return isShell
            ? new(
                "boils-cooler",
                $"{boils} a shell is dry and firm later than at sea level: bake longer.",
                "boiling point: IAPWS-IF97 and US Standard Atmosphere 1976; baking longer: common practice, no source"
            )
            : new(
                "boils-cooler",
                $"{boils} it puffs a little sooner than at sea level: as hot and as long as written.",
                "boiling point: IAPWS-IF97 and US Standard Atmosphere 1976; as written: common practice, no source"
            );
    }

    /// <summary>Why no table changes it.</summary>
    private static string Untabled(BakersFormula formula, IReadOnlyList<GivenHeat> heats) =>
        formula.Leavening != Leavening.Chemical ? "the table is for cakes and quick breads"
        : !IsFromAnOven(heats) ? "the table is for what an oven bakes"
        : HasLittleSugar(formula) ? "the table is for cakes, and this has next to no sugar"
        : "the table begins higher up";

    private static Explanation Explain(
        BakersFormula formula,
        double metres,
        List<AdjustedLine> lines,
        double flour,
        AltitudeAdjustment? row,
        AltitudeTable table,
        BakersFormula adjusted,
        string untabled
    ) =>
        new(
            $"{formula.Title} at {Figures.Exact(metres)} m",
            row is null
                ? [ExplainedStep.Given("change", untabled, "none")]
                :
                [
                    .. lines.Select(line => new ExplainedStep(
                        line.Ingredient.Name,
                        $"before × (1 + change), of {Figures.PerHundredOf(line.Range.Low)} to {Figures.PerHundredOf(line.Range.High)}",
                        $"{Figures.PerHundredOf(line.Before)} × (1 + {Figures.Show(line.Chosen / line.Before - 1)})",
                        Figures.PerHundredOf(line.Chosen)
                    )),
                    new(
                        "total",
                        "all lines / all flour",
                        $"{Figures.PerHundredOf(adjusted.TotalPercent * flour / formula.FlourPercent)} / {Figures.PerHundredOf(PerHundred.Of(flour, formula.FlourPercent))}",
                        Figures.Percent(PerHundred.Share(adjusted.TotalPercent))
                    ),
                ],
            $"{(row is null ? "No change by" : $"For {Figures.Exact(row.FromFeet, 0)} ft, in proportion between the rows of")} the table of the {table.Name}: {table.Source}."
        );
}
