using System.Text.RegularExpressions;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Packs;

/// <summary>One formula's place in the comparison of leavenings.</summary>
/// <param name="Bread">The formula; its traits say in words what cannot be computed.</param>
/// <param name="PerPiece">The gas of one piece: what the class measures, and so what every page compares.</param>
/// <param name="Per100Flour">The gas of the dough that holds 100 g of flour: a second view, for holding against other formulas.</param>
/// <param name="Bench">Minutes from the end of mixing to the oven.</param>
/// <param name="Oven">Minutes in the oven.</param>
/// <param name="AllWaterPercent">All water, the flour's own too, of the flour.</param>
public sealed partial record LeaveningComparison(
    LessonFormula Bread,
    GasBudget PerPiece,
    GasBudget Per100Flour,
    Band<double> Bench,
    Band<double> Oven,
    double AllWaterPercent
)
{
    /// <summary>False where nobody can say how much gas it holds, and so how high and wide it gets.</summary>
    public bool IsRisePredicted => PerPiece.Held.Holding.IsPredicted;

    /// <summary>False where nobody can say how much gas is made in it.</summary>
    public bool IsGasPredicted => PerPiece.IsGasPredicted;

    /// <summary>As wide as a piece is at its widest once it is done, by typical values, in millimetres; null where no model says.</summary>
    public double? WidthMillimetres =>
        IsRisePredicted && Bread.FillingMass.Grams == 0
            ? Bread.Shape?.DiameterOf((PerPiece.GasFreeVolume + PerPiece.Held.Baked.Typical).Millilitres)
            : null;

    /// <summary>As warm as it is after its last rest in the room, as far as that is known; null where it has none.</summary>
    public Band<Temperature>? Stood { get; init; }

    /// <summary>What does one thing in the dough, in percent of the flour.</summary>
    public double Percent(IngredientRole role) => Bread.Formula.Lines.Where(line => line.Ingredient.Role == role).Sum(line => line.Percent);

    internal static Computed<LeaveningComparison> Of(LessonFormula formula, BenchPlace place, Pressure pressure, GasBudgetSettings settings)
    {
        var assumed = Assumed(formula, settings);
        var stages = BakeStages.Of(formula, place, Saturation.BoilingPoint(pressure));
        var working = formula.Working;
        return Budget(Mass.FromGrams(working.TotalPercent))
            .Then(flour =>
                Budget(Mass.FromGrams(formula.PieceMass.Grams * working.TotalPercent / formula.Dried.TotalPercent))
                    .Then<LeaveningComparison>(piece => new LeaveningComparison(
                        formula,
                        piece,
                        flour,
                        Minutes(inOven: false),
                        Minutes(inOven: true),
                        DoughWater.AllWaterPercent(formula.Dried)
                    )
                    {
                        Stood = stages.LastOrDefault(stage => stage.Warming is not null) is { } rest
                            ? rest.Warming!.Between(rest.Minutes.Typical)
                            : null,
                    })
            );

        Computed<GasBudget> Budget(Mass dough) =>
            GasBudget
                .Of(working, dough, stages, place.Mixed, pressure, assumed)
                .Then<GasBudget>(budget =>
                    budget with
                    {
                        IsOfFrozenDough = formula.IsFrozenDough,
                        IsOfAgedLeavening = formula.HasAgedLeavening,
                    }
                );

        Band<double> Minutes(bool inOven) =>
            stages
                .Where(stage => stage.InOven == inOven)
                .Aggregate(default(Band<double>), (sum, stage) => sum.With(stage.Minutes, (left, right) => left + right));
    }

    /// <summary>How a batter was beaten and what the author says that it makes; no formula tells either.</summary>
    private static GasBudgetSettings Assumed(LessonFormula formula, GasBudgetSettings settings)
    {
        var isFoam = formula.Structure == CrumbStructure.Foam;
        var gravity =
            formula.SpecificGravity is { } measured ? BatterAir.Around(measured)
            : isFoam ? BatterAir.FoamSpecificGravity
            : IsCreamed(formula) ? BatterAir.CreamedSpecificGravity
            : (Band<double>?)null;
        var holding = GasHolding.AsWritten(formula.Structure, formula.Formula)
            ?? (IsCreamed(formula) ? GasHolding.CreamedBatter : settings.Holding);
        // Nobody has published how fast a dough that is past its time lets gas go, nor how far one without a net rises, one that was
        // frozen, whose leavening grew old, or that has none.
        if (
            formula.Place is { IsPastItsTime: true }
            || formula.IsFrozenDough
            || formula.HasAgedLeavening
            || formula.Formula.Leavening == Leavening.None
            || (GasHolding.HasNoNet(formula.Formula) && !isFoam)
        )
            holding = (holding ?? GasHolding.For(formula.Formula)) with { IsPredicted = false };
        return settings with
        {
            AirShare = gravity is { } beaten ? BatterAir.ShareOf(formula.Formula, beaten) : settings.AirShare,
            Holding = holding,
        };
    }

    /// <summary>
    /// Fat and sugar that are beaten pale hold far more air than any other batter; the method says so, by a step that creams, and no formula
    /// does. Cream that goes into a bread or onto it beats nothing, and no yeast dough is a cake batter.
    /// </summary>
    private static bool IsCreamed(LessonFormula formula) =>
        formula.Formula.Leavening == Leavening.Chemical
        && Has(formula, IngredientRole.Fat)
        && Has(formula, IngredientRole.Sugar)
        && formula.Steps.Any(step => Creams().IsMatch(step.Name));

    private static bool Has(LessonFormula formula, IngredientRole role) =>
        formula.Formula.Lines.Any(line => line.Percent > 0 && line.Ingredient.Role == role);

    [GeneratedRegex(@"^\s*cream(s|ing)?\b(?!\s+(cheese|filling|topping|puffs?|of|on)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex Creams();
}
