using ClassKit.Baking.Cooking;
using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.GasBudgets;

/// <summary>A dough on its way through bench and oven, whose gas is asked for.</summary>
/// <param name="Formula">What it is made of.</param>
/// <param name="Dough">How much of it.</param>
/// <param name="Stages">What is done with it, in order.</param>
/// <param name="Bench">The mixed dough.</param>
/// <param name="Pressure">Outside.</param>
/// <param name="Settings">What is assumed.</param>
internal sealed record DoughBake(
    BakersFormula Formula,
    Mass Dough,
    IReadOnlyList<BakeStage> Stages,
    Temperature Bench,
    Pressure Pressure,
    GasBudgetSettings Settings
)
{
    public Volume GasFree { get; } = DoughVolume.GasFree(Formula, Dough);

    public Mass Water { get; } = DoughWater.In(Formula, Dough);

    public Mass YeastSolids { get; } = Fermentation.YeastSolids(Formula, Dough);

    /// <summary>Sugars that were added, of the flour.</summary>
    public double SugarPercent { get; } = Fermentation.SugarPercent(Formula);

    /// <summary>As warm as it is before the heat, wherever that is asked: as its last stage on the bench leaves it, or as it was mixed.</summary>
    public Temperature Stood { get; } = Standing(Bench, Stages);

    /// <summary>The same of a dough that was mixed to a temperature.</summary>
    public static Temperature Standing(Temperature bench, IReadOnlyList<BakeStage> stages) =>
        stages.LastOrDefault(stage => !stage.InOven)?.End ?? bench;

    /// <summary>What it is cooked in for the longest.</summary>
    public CookingWay Way { get; } = Stages.Where(stage => stage.InOven).MaxBy(stage => stage.Minutes.Typical)?.Way ?? CookingWay.Oven;

    public GasHolding Holding { get; } = CookedHolding.Of(Settings.Holding ?? GasHolding.For(Formula), Formula, Stages);
}
