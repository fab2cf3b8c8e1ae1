using ClassKit.Baking.Altitude;
using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Costing;
using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Preferments;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Weighing;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.Explanations;

/// <summary>Every public computation of the room, each with ordinary input.</summary>
internal static class Samples
{
    private static readonly Temperature Bench = Temperature.FromCelsius(27.3);
    private static readonly Mass Dough = Mass.FromGrams(437.5);
    private static readonly Pressure High = StandardAtmosphere.PressureAt(1609.344).Value;
    private static readonly PurchaseUnit Bag = new("bag", Mass.FromPounds(50), new(23.95m));
    private static readonly YieldTest Trim = YieldTest.Of(Mass.FromKilograms(5.2), Mass.FromKilograms(4.6)).Value;

    private static readonly BakersFormula French = Doughs.Of(
        "french_bread",
        Leavening.Yeast,
        ("bread_flour", 100),
        ("water", 67),
        ("salt", 2),
        ("fresh_yeast", 1.1)
    );

    private static readonly SubMix Poolish = SubMix.FromOwnPercentages(
        "Poolish",
        33,
        Doughs.Of("poolish", Leavening.Yeast, ("bread_flour", 100), ("water", 100), ("fresh_yeast", 0.21)).Lines
    );

    private static readonly HeatPart[] Parts =
    [
        new("flour", 183.4, Temperature.FromCelsius(20.6)),
        new("egg", 41.7, Temperature.FromCelsius(-1.5)),
        new("milk", 288.1, Temperature.FromCelsius(31.9)),
    ];

    public static IReadOnlyList<Sample> All { get; } =
    [
        Sample.Of("AltitudeFormula.For", AltitudeFormula.For(Doughs.Muffins, 1609.344), formula => formula.Adjusted.TotalPercent / 100),
        Sample.Of("BakingPowder.AvailableCarbonDioxide", BakingPowder.AvailableCarbonDioxide(Mass.FromGrams(11.3), 0.127)),
        Sample.Of("BakingPowder.SodaShare", BakingPowder.SodaShare(0.12)),
        Sample.Of(
            "BakingPowder.AvailableShare",
            BakingPowder.AvailableShare(Mass.FromGrams(30), Mass.FromGrams(40.1), LeaveningAcid.SodiumAcidPyrophosphate, Mass.FromGrams(40))
        ),
        Sample.Of("BakingPowder.InPlaceOfSoda", BakingPowder.InPlaceOfSoda(Mass.FromGrams(4.6), 0.13)),
        Sample.Of("BakingPowder.SodaInPlaceOf", BakingPowder.SodaInPlaceOf(Mass.FromGrams(13.8), 0.13)),
        Sample.Of("BatchCost.Of", Cost(), cost => (double)cost.PerPiece.Amount),
        Sample.Of("BoilingWater.At", BoilingWater.At(1609.344), boiling => boiling.Celsius),
        Sample.Of("PowderRelease.ShareAt", PowderRelease.DoubleActing.ShareAt(Temperature.FromCelsius(55))),
        Sample.Of(
            "SelfRisingFlour.Of",
            SelfRisingFlour.Of(
                Mass.FromGrams(100),
                Mass.FromGrams(1.2),
                Mass.FromGrams(1.5),
                LeaveningAcid.MonocalciumPhosphate,
                Mass.FromGrams(1.5)
            ),
            flour => flour.CarbonDioxideShare
        ),
        new(
            "HouseholdMeasures.For",
            HouseholdMeasures.For(IngredientCatalog.Get("ap_flour"), Mass.FromGrams(217))!.Explanation,
            HouseholdMeasures.For(IngredientCatalog.Get("ap_flour"), Mass.FromGrams(217))!.Error
        ),
        Sample.Of("Carbonate.InPlaceOf", Carbonate.PotassiumBicarbonate.InPlaceOf(Carbonate.BakingSoda, Mass.FromGrams(4.6))),
        Sample.Of(
            "TimeControl.MinutesUntilDiscarded",
            TimeControl.MinutesUntilDiscarded(Temperature.FromCelsius(5), Temperature.FromCelsius(20))
        ),
        Sample.Of("CarbonDioxide.DryVolume", CarbonDioxide.DryVolume(Mass.FromGrams(2.619), Bench, High)),
        Sample.Of(
            "DissolvedCarbonDioxide.InBubbles",
            DissolvedCarbonDioxide.InBubbles(
                AmountOfSubstance.FromMoles(0.0123),
                AmountOfSubstance.FromMoles(0.0007),
                Mass.FromGrams(117),
                Bench,
                High
            ),
            gas => gas.Moles
        ),
        Sample.Of("DoughLoss.DoughFor", DoughLoss.Added(2, 11).DoughFor(Mass.FromPounds(500))),
        Sample.Of("DoughLoss.DoughFor", DoughLoss.Compounded(2, 11).DoughFor(Mass.FromPounds(500))),
        Sample.Of(
            "DoughTemperature.LiquidFor",
            DoughTemperature.LiquidFor(Bench, Factors("flour", "room", "preferment"), TemperatureDifference.FromKelvins(4.4)),
            liquid => liquid.Temperature.Celsius
        ),
        Sample.Of("DoughTemperature.Friction", DoughTemperature.Friction(Bench, Factors("flour", "room", "water")), friction =>
            friction.Kelvins
        ),
        Sample.Of(
            "DoughTemperature.Expected",
            DoughTemperature.Expected(Factors("flour", "room", "water"), TemperatureDifference.FromKelvins(7.7)),
            expected => expected.Celsius
        ),
        Sample.Of(
            "EquivalentSchedule.Minutes",
            EquivalentSchedule.Minutes(75, Bench, Temperature.FromCelsius(5), 0.8, YeastGasModel.Default)
        ),
        Sample.Of(
            "EquivalentSchedule.YeastRatio",
            EquivalentSchedule.YeastRatio(75, Bench, 600, Temperature.FromCelsius(12), YeastGasModel.Default)
        ),
        Sample.Of("FormulaSheet.For", FormulaSheet.For(French, [Poolish], Mass.FromKilograms(10)), sheet => sheet.Dough.Grams),
        Sample.Of(
            "FormulaSheet.Overall",
            FormulaSheet.Overall(
                "o",
                "O",
                Leavening.Yeast,
                [Of("bread_flour", 900), Of("water", 468)],
                [Of("bread_flour", 468), Of("water", 468)]
            ),
            formula => formula.TotalPercent / 100
        ),
        Sample.Of("GasBudget.Of", Budget(Doughs.Buns), budget => budget.Held.SpecificVolume.Typical * 1e-3),
        Sample.Of("GasCell.VolumeOf", GasCell.VolumeOf(AmountOfSubstance.FromMoles(0.0123), Bench, High)),
        Sample.Of("GasCell.Expansion", GasCell.Expansion(Bench, Temperature.FromCelsius(88), High)),
        Sample.Of("GasCell.VapourShare", GasCell.VapourShare(Bench, High)),
        Sample.Of("HeatBalance.Mixed", HeatBalance.Mixed(Parts), mixed => mixed.Celsius),
        Sample.Of("HeatBalance.PartFor", HeatBalance.PartFor(Bench, Parts, 301.7), part => part.Celsius),
        Sample.Of("Hydration.Of", Hydration.Of(Doughs.Buns), hydration => hydration.MoistureShare),
        Sample.Of("Ice.For", Ice.For(Dough, Temperature.FromCelsius(19), Temperature.FromCelsius(4)), iced => iced.Liquid.Grams),
        Sample.Of(
            "Ice.For",
            Ice.For(Dough, Temperature.FromCelsius(19), Temperature.FromCelsius(4), IceModel.Replacing, Temperature.FromCelsius(-18)),
            iced => iced.Liquid.Grams
        ),
        Sample.Of("LeaveningAcid.For", LeaveningAcid.SodiumAcidPyrophosphate.For(Mass.FromGrams(1.7))),
        Sample.Of("LeaveningAcid.SodaFor", LeaveningAcid.LacticAcid.SodaFor(Mass.FromGrams(2.205))),
        Sample.Of("MixerBowl.Divide", MixerBowl.Divide(Mass.FromKilograms(28.47), Mass.FromKilograms(10)), bowl => bowl.Each.Grams),
        Sample.Of("Neutralization.Of", Neutralization.Of(Mass.FromGrams(1.15), Mass.FromGrams(1.875), LeaveningAcid.CreamOfTartar), mixed =>
            mixed.CarbonDioxide.Grams
        ),
        Sample.Of(
            "Percentages.FromWeights",
            Percentages.FromWeights("p", "P", Leavening.Chemical, [Of("ap_flour", 453.6), Of("skim_milk", 28.4), Of("water", 283.5)]),
            formula => formula.TotalPercent / 100
        ),
        Sample.Of("PortionFactor.Of", PortionFactor.Of(100, Mass.FromOunces(4), 348, Mass.FromOunces(3))),
        Sample.Of("ProofTime.Minutes", ProofTime.Minutes(Doughs.Buns, Bench, 2.1, High, 0.7, YeastGasModel.Default)),
        Sample.Of("PurchaseUnit.get_PricePerKilogram", Bag.PricePerKilogram),
        Sample.Of("PurchaseUnit.PacksFor", Bag.PacksFor(Mass.FromKilograms(61.3)), packs => packs),
        Sample.Of("PurchaseUnit.CostOfPacks", Bag.CostOfPacks(Mass.FromKilograms(61.3))),
        Sample.Of("PurchaseUnit.CostOf", Bag.CostOf(Mass.FromGrams(807.3))),
        Sample.Of("Scaling.FromFlour", Scaling.FromFlour(Doughs.Buns, Dough, Scales.Common), batch => batch.Lines[^1].Exact.Grams),
        Sample.Of("Scaling.FromDough", Scaling.FromDough(Doughs.Muffins, Dough, Scales.Common), batch => batch.Lines[^1].Exact.Grams),
        Sample.Of(
            "Scaling.FromPieces",
            Scaling.FromPieces(Doughs.Worksheet, 73, Mass.FromGrams(390), DoughLoss.Compounded(2, 11), Scales.Common),
            batch => batch.Lines[^1].Exact.Grams
        ),
        Sample.Of(
            "Scaling.FromIngredient",
            Scaling.FromIngredient(Doughs.Buns, IngredientCatalog.Get("whole_milk"), Mass.FromGrams(243.7), Scales.Common),
            batch => batch.Lines[^1].Exact.Grams
        ),
        Sample.Of("SellingPrice.For", SellingPrice.For(new(1.2345m), 28.5)),
        Sample.Of("SellingPrice.FoodCostPercent", SellingPrice.FoodCostPercent(new(1.2345m), new(4.25m)), percent => percent / 100),
        Sample.Of("Sodium.In", Sodium.In(Doughs.Muffins, Mass.FromGrams(60))),
        Sample.Of("StandardAtmosphere.PressureAt", StandardAtmosphere.PressureAt(1609.344), pressure => pressure.Pascals),
        Sample.Of("StandardAtmosphere.PressureAt", StandardAtmosphere.PressureAt(1609.344, AltitudeKind.Geopotential), pressure =>
            pressure.Pascals
        ),
        Sample.Of("SteamPocket.WaterToFill", SteamPocket.WaterToFill(Volume.FromMillilitres(253), High)),
        Sample.Of("SteamPocket.SteamFrom", SteamPocket.SteamFrom(Mass.FromGrams(0.149), High)),
        Sample.Of(
            "SteamPocket.ShareOfWater",
            SteamPocket.ShareOfWater(Volume.FromMillilitres(253), Doughs.Popovers, Mass.FromGrams(60), High)
        ),
        Sample.Of("YeastFactors.Convert", YeastFactors.EqualSolids.Convert(Mass.FromGrams(37.2), YeastKind.Fresh, YeastKind.Instant)),
        Sample.Of("YeastGas.Made", YeastGas.Made(Doughs.Buns, Dough, Bench, 75, YeastGasModel.Default), gas => gas.Typical.Moles),
        Sample.Of("YieldTest.Of", YieldTest.Of(Mass.FromKilograms(5.2), Mass.FromKilograms(4.6)), test => test.Share),
        Sample.Of("YieldTest.FromTrim", YieldTest.FromTrim(Mass.FromKilograms(7.75), Mass.FromKilograms(2.75)), test => test.Share),
        Sample.Of("YieldTest.ToBuy", Trim.ToBuy(Mass.FromKilograms(14.45))),
        Sample.Of("YieldTest.EdiblePortionPrice", Trim.EdiblePortionPrice(new(11.95m))),
    ];

    /// <summary>The explanations inside a gas budget, one for each source, steam and what is held.</summary>
    public static IReadOnlyList<Explanation> InBudgets { get; } =
    [
        .. new[]
        {
            Doughs.Buns,
            Doughs.Muffins,
            Doughs.Popovers,
            Doughs.Of("tartar", Leavening.Chemical, ("ap_flour", 100), ("whole_milk", 70), ("baking_soda", 1), ("cream_of_tartar", 1.5)),
        }
            .Select(formula => Budget(formula).Value)
            .SelectMany(budget =>
                budget.Sources.Select(source => source.Explanation).Append(budget.Steam.Explanation).Append(budget.Held.Explanation)
            ),
    ];

    private static Computed<GasBudget> Budget(BakersFormula formula) =>
        GasBudget.Of(
            formula,
            Dough,
            [
                new("First rise", new(40, 45, 50), Bench, false),
                new("Shape", new(5, 6.5, 8), Temperature.FromCelsius(24), false, true),
                new("Second rise", new(25, 27.5, 30), Bench, false),
                new("Bake", new(18, 19, 20), Temperature.FromCelsius(205), true),
            ],
            Bench,
            High,
            GasBudgetSettings.Default
        );

    private static Computed<BatchCost> Cost() =>
        BatchCost.Of(
            Scaling.FromFlour(Doughs.Worksheet, Mass.FromGrams(1000), Scales.Common).Value,
            4,
            new Dictionary<string, PurchaseUnit>
            {
                ["bread_flour"] = Bag,
                ["water"] = new("tap", Mass.FromKilograms(1000), new(3.4m)),
                ["salt"] = Bag,
                ["instant_yeast"] = new("tin", Mass.FromGrams(454), new(7.99m)),
            }
        );

    private static TemperatureFactor[] Factors(params string[] names) =>
        [.. names.Select((name, at) => new TemperatureFactor(name, Temperature.FromCelsius(20.6 + 1.7 * at)))];

    private static WeighedIngredient Of(string id, double grams) => new(IngredientCatalog.Get(id), Mass.FromGrams(grams));
}
