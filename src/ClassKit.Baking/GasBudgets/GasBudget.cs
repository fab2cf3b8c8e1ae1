using ClassKit.Baking.Cooking;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.GasBudgets;

/// <summary>All the gas that a mass of dough makes or expands, whatever makes it, on one axis.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Dough">How much of it the budget is for.</param>
/// <param name="Pressure">Outside.</param>
/// <param name="Bench">The dough's temperature on the bench.</param>
/// <param name="GasFreeVolume">The dough without any gas.</param>
/// <param name="Sources">One for each thing in the formula that makes gas, and air.</param>
/// <param name="Steam">What its water could do.</param>
/// <param name="Expansion">How many times a bubble grows from the bench to the crumb's setting.</param>
/// <param name="Course">The gas over the recipe's own time.</param>
/// <param name="SodaLeft">Soda that no acid meets: it tastes of soap.</param>
/// <param name="Held">How much of all that the dough can be expected to hold.</param>
public sealed record GasBudget(
    BakersFormula Formula,
    Mass Dough,
    Pressure Pressure,
    Temperature Bench,
    Volume GasFreeVolume,
    IReadOnlyList<GasSource> Sources,
    SteamSupply Steam,
    Band<double> Expansion,
    IReadOnlyList<GasPoint> Course,
    Band<Mass> SodaLeft,
    HeldGas Held
) : IExplained
{
    /// <summary>The water that leaves in the oven as steam: made, held and lost.</summary>
    public required SteamFate SteamFate { get; init; }

    /// <summary>What it is cooked in for the longest; an oven where it is not cooked at all.</summary>
    public CookingWay Way { get; init; } = CookingWay.Oven;

    /// <summary>True of a dough that is frozen before it is baked.</summary>
    public bool IsOfFrozenDough { get; init; }

    /// <summary>True of a dough whose leavening has grown old: what that has left of it nobody can compute.</summary>
    public bool IsOfAgedLeavening { get; init; }

    /// <summary>
    /// False where a starter ferments it: how much gas its microbes make no formula tells; nor how many yeast cells outlive a freezer, nor
    /// what age leaves of a powder.
    /// </summary>
    public bool IsGasPredicted => !Formula.HasStarter && !(IsOfFrozenDough && Formula.IsFermented) && !IsOfAgedLeavening;

    /// <summary>False of a fermented dough of which nobody can say what it holds: not on the bench either.</summary>
    public bool IsBenchPredicted => IsGasPredicted && (Held.Holding.IsPredicted || !Formula.IsFermented || Way != CookingWay.Oven);

    /// <summary>How far it rises in each stage on the bench, in order; none of a dough that nothing ferments.</summary>
    public IReadOnlyList<BenchRise> Rises =>
        Sources.Any(source => source.Kind == GasSourceKind.Yeast) ? BenchRise.Of(GasFreeVolume, Course) : [];

    /// <summary>All gas made by the end of baking: in a shell all its steam, in a crumb that of its bubbles.</summary>
    public Band<Volume> Made =>
        Formula.Leavening == Leavening.Steam && Held.Holding is { IsHollow: true } or { IsPredicted: false }
            ? AtSet.With(SteamFate.Made, (gas, steam) => gas + steam)
            : AtSet;

    /// <summary>From the gas made to the volume of the baked bread. How each source makes its gas stands with the source.</summary>
    public Explanation Explanation => Held.Explanation;

    /// <summary>All sources together by the time the crumb sets, with their vapour; steam comes on top.</summary>
    public Band<Volume> AtSet =>
        Sources.Aggregate(default(Band<Volume>), (sum, source) => sum.With(source.AtSet, (left, right) => left + right));

    /// <summary>All sources together on the bench, with their vapour.</summary>
    public Band<Volume> OnBench =>
        Sources.Aggregate(default(Band<Volume>), (sum, source) => sum.With(source.OnBench, (left, right) => left + right));

    /// <summary>The budget of a mass of dough.</summary>
    /// <param name="formula">With flour in it.</param>
    /// <param name="dough">Above 0.</param>
    /// <param name="stages">From the end of mixing to the end of baking, in order.</param>
    /// <param name="bench">The mixed dough's temperature.</param>
    /// <param name="pressure">Outside.</param>
    /// <param name="settings">What is assumed.</param>
    public static Computed<GasBudget> Of(
        BakersFormula formula,
        Mass dough,
        IReadOnlyList<BakeStage> stages,
        Temperature bench,
        Pressure pressure,
        GasBudgetSettings settings
    )
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(stages);
        ArgumentNullException.ThrowIfNull(settings);
        if (
            (FormulaSanity.Of(formula) ?? Sanity.Mass(dough, "dough", "no-dough") ?? Sanity.Temperature(bench, 0, 100, "Mixed dough")) is
            { } odd
        )
            return odd;
        if (stages.Select(WhatIsWrong).FirstOrDefault(wrong => wrong is not null) is { } wrongStage)
            return wrongStage;

        if (Sanity.Air(pressure) is { } thin)
            return thin;
        settings = settings with { SetTemperature = SettingTemperature.Of(formula, settings.SetTemperature, pressure) };
        foreach (var stage in stages.Where(stage => !stage.InOven))
            if (GasCell.VapourShare(stage.Temperature, pressure).Why is { } why)
                return why with { Message = $"{stage.Name}: {why.Message}" };

        var stood = DoughBake.Standing(bench, stages);
        return GasCell
            .Expansion(stood, settings.SetTemperature.Low, pressure)
            .Then(low =>
                GasCell
                    .Expansion(stood, settings.SetTemperature.Typical, pressure)
                    .Then(typical =>
                        GasCell
                            .Expansion(stood, settings.SetTemperature.High, pressure)
                            .Then<GasBudget>(high =>
                                new GasBudgeting(new(formula, dough, stages, bench, pressure, settings)).Budget(new(low, typical, high))
                            )
                    )
            );
    }

    /// <summary>Nothing takes longer than two weeks.</summary>
    private const double MostMinutes = 14 * 24 * 60;

    private const double HottestOven = 600;

    private static Impossibility? WhatIsWrong(BakeStage stage) =>
        Sanity.Number(stage.Minutes.Low, 0, MostMinutes, $"Minutes of {stage.Name}", "minutes-out-of-range")
        ?? Sanity.Number(stage.Minutes.Typical, stage.Minutes.Low, MostMinutes, $"Minutes of {stage.Name}", "minutes-out-of-range")
        ?? Sanity.Number(stage.Minutes.High, stage.Minutes.Typical, MostMinutes, $"Minutes of {stage.Name}", "minutes-out-of-range")
        ?? Sanity.Temperature(stage.Temperature, 0, stage.InOven ? HottestOven : 100, stage.Name);
}
