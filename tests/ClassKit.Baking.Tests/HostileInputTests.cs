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
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Preferments;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Weighing;
using ClassKit.Baking.Yeast;
using CsCheck;

namespace ClassKit.Baking.Tests;

/// <summary>Whatever is typed, a public computation gives a reason or a finite number of a sane size, never an exception.</summary>
public sealed class HostileInputTests
{
    /// <summary>No mass in grams, volume in litres, temperature, price or factor in a bakery is larger.</summary>
    private const double SaneSize = 1e15;

    private static readonly double[] Odd =
    [
        0,
        -0.0,
        -1,
        1,
        100,
        99.999999999,
        100.0001,
        -100,
        1e-9,
        double.Epsilon,
        1e-300,
        1e9,
        1e15,
        1e28,
        1e300,
        double.MaxValue,
        -double.MaxValue,
        double.NaN,
        double.PositiveInfinity,
        double.NegativeInfinity,
        -273.15,
        -40,
        55,
        57.5,
        212,
        1000,
        101_325,
    ];

    /// <summary>Half of them ordinary, so that one odd number among good ones gets as far as it can.</summary>
    private static readonly Gen<double> AnyNumber = Gen.OneOf(
        Doughs.AnyOf(Odd),
        Gen.Double[0, 1],
        Gen.Double[0, 100],
        Gen.Double[-1000, 100_000]
    );

    private static readonly Gen<Mass> AnyMass = AnyNumber.Select(number => Mass.FromGrams(double.IsFinite(number) ? number : 250));
    private static readonly Gen<Temperature> AnyTemperature = AnyNumber.Select(number =>
        Temperature.FromCelsius(double.IsFinite(number) ? Math.Max(-273.15, number) : 21)
    );
    private static readonly Gen<Pressure> AnyPressure = Gen.OneOf(
        AnyNumber.Select(number => Pressure.FromPascals(double.IsFinite(number) ? Math.Abs(number) : 0)),
        Gen.Double[50_000, 105_000].Select(Pressure.FromPascals)
    );
    private static readonly Gen<Money> AnyMoney = Doughs
        .AnyOf(0m, -1m, 0.0001m, 1.25m, 1e-20m, decimal.MaxValue, decimal.MinValue, 1e9m, 9.99m)
        .Select(amount => new Money(amount));
    private static readonly Gen<Volume> AnyVolume = AnyNumber.Select(number => Volume.FromLitres(double.IsFinite(number) ? number : 0.25));
    private static readonly Gen<AmountOfSubstance> AnyAmount = AnyNumber.Select(number =>
        AmountOfSubstance.FromMoles(double.IsFinite(number) ? number : 0.01)
    );

    private static readonly Gen<BakersFormula> AnyFormula = Gen.OneOf(
        Doughs.AnyOf(Doughs.Buns, Doughs.Muffins, Doughs.Popovers, Doughs.Worksheet),
        Gen.Select(AnyNumber, AnyNumber, AnyNumber, Doughs.AnyOf(Leavening.Steam, Leavening.Yeast, Leavening.Chemical))
            .Select(
                (flour, water, yeast, leavening) =>
                    Doughs.Of("odd", leavening, ("bread_flour", flour), ("water", water), ("instant_yeast", yeast))
            ),
        Gen.Const(Doughs.Of("empty", Leavening.Yeast)),
        Gen.Const(Doughs.Of("no_flour", Leavening.Yeast, ("water", 100), ("instant_yeast", 1)))
    );

    [Fact]
    public void Scaling_survives_anything() =>
        Gen.Select(AnyFormula, AnyMass, AnyMass, AnyMass, AnyNumber, Gen.Int)
            .Sample(
                (formula, mass, large, small, loss, pieces) =>
                {
                    Scales scales = new(large, small);
                    Check(Scaling.FromFlour(formula, mass, scales), Numbers);
                    Check(Scaling.FromDough(formula, mass, Scales.Common), Numbers);
                    Check(Scaling.FromPieces(formula, pieces, mass, new DoughLoss([loss, 2]), Scales.Common), Numbers);
                    Check(Scaling.FromPieces(formula, 12, mass, new DoughLoss([loss, 2], LossRule.Compounded), Scales.Common), Numbers);
                    Check(Scaling.FromIngredient(formula, IngredientCatalog.Get("water"), mass, Scales.Common), Numbers);
                    Check(MixerBowl.Divide(mass, large), bowl => [bowl.Batches, bowl.Each.Grams]);
                    Check(new DoughLoss([loss]).DoughFor(mass), dough => [dough.Grams]);

                    static double[] Numbers(Batch batch) =>
                        [
                            .. batch.Lines.SelectMany(line => new[] { line.Exact.Grams, line.Weighed.Grams }),
                            batch.Exact.Grams,
                            batch.Weighed.Grams,
                        ];
                }
            );

    [Fact]
    public void Formulas_survive_anything() =>
        Gen.Select(AnyFormula, AnyMass, AnyMass, AnyNumber, AnyNumber, AnyNumber)
            .Sample(
                (formula, flour, water, share, metres, place) =>
                {
                    Check(Percentages.FromWeights("p", "P", Leavening.Yeast, [Of("bread_flour", flour), Of("water", water)]), made =>
                        [made.TotalPercent]
                    );
                    Check(FormulaSheet.Overall("p", "P", Leavening.Yeast, [Of("bread_flour", flour)], [Of("water", water)]), made =>
                        [made.TotalPercent]
                    );
                    var sub = SubMix.FromOwnPercentages(
                        "Poolish",
                        share,
                        Doughs.Of("p", Leavening.Yeast, ("bread_flour", 100), ("water", 100)).Lines
                    );
                    Check(FormulaSheet.For(formula, [sub], flour), sheet =>
                        [
                            sheet.Dough.Grams,
                            sheet.FinalDough.Grams,
                            .. sheet.Rows.SelectMany(row => new[] { row.Final.Grams, row.FinalPercent ?? 0 }),
                        ]
                    );
                    Check(Hydration.Of(formula), hydration =>
                        [hydration.AddedLiquidPercent, hydration.EffectivePercent, hydration.AllWaterPercent, hydration.MoistureShare]
                    );
                    Check(Sodium.In(formula, flour), sodium => [sodium.Grams]);
                    Check(AltitudeFormula.For(formula, metres, AltitudeTable.CookBook, place), changed => [changed.Adjusted.TotalPercent]);
                }
            );

    [Fact]
    public void Temperatures_survive_anything() =>
        Gen.Select(AnyTemperature, AnyTemperature, AnyTemperature, AnyNumber, AnyMass, AnyTemperature)
            .Sample(
                (dough, flour, room, rub, water, ice) =>
                {
                    var friction = TemperatureDifference.FromKelvins(double.IsFinite(rub) ? rub : 4);
                    TemperatureFactor[] factors = [new("flour", flour), new("room", room)];
                    Check(DoughTemperature.LiquidFor(dough, factors, friction), liquid => [liquid.Temperature.Celsius]);
                    Check(DoughTemperature.Friction(dough, factors), found => [found.Kelvins]);
                    Check(DoughTemperature.Expected(factors, friction), expected => [expected.Celsius]);
                    Check(DoughTemperature.LiquidFor(dough, [], friction), liquid => [liquid.Temperature.Celsius]);
                    HeatPart[] parts = [new("flour", rub, flour), HeatPart.Of(IngredientCatalog.Get("whole_egg"), water, room)];
                    Check(HeatBalance.Mixed(parts), mixed => [mixed.Celsius]);
                    Check(HeatBalance.PartFor(dough, parts, water.Grams), part => [part.Celsius]);
                    foreach (var model in Enum.GetValues<IceModel>())
                        Check(Ice.For(water, flour, room, model, ice), iced => [iced.Ice.Grams, iced.Liquid.Grams]);
                }
            );

    [Fact]
    public void Chemistry_survives_anything() =>
        Gen.Select(AnyMass, AnyMass, AnyMass, AnyNumber, AnyTemperature, AnyPressure)
            .Sample(
                (soda, acid, filler, number, temperature, pressure) =>
                {
                    LeaveningAcid made = new("own", "Own acid", number, "by hand");
                    foreach (var kind in new[] { LeaveningAcid.CreamOfTartar, made })
                    {
                        Check(kind.For(soda), mass => [mass.Grams]);
                        Check(kind.SodaFor(acid), mass => [mass.Grams]);
                        Check(Neutralization.Of(soda, acid, kind), mixed =>
                            [
                                mixed.SodaUsed.Grams,
                                mixed.SodaLeft.Grams,
                                mixed.AcidLeft.Grams,
                                mixed.CarbonDioxide.Grams,
                                mixed.CarbonDioxideByHeat.Grams,
                            ]
                        );
                        Check(BakingPowder.AvailableShare(soda, acid, kind, filler), share => [share]);
                    }
                    Check(BakingPowder.AvailableCarbonDioxide(soda, number), mass => [mass.Grams]);
                    Check(BakingPowder.SodaShare(number), share => [share]);
                    Check(BakingPowder.InPlaceOfSoda(soda, number), mass => [mass.Grams]);
                    Check(BakingPowder.SodaInPlaceOf(soda, number), mass => [mass.Grams]);
                    Check(SelfRisingFlour.Of(filler, soda, acid, LeaveningAcid.CreamOfTartar, default), flour =>
                        [flour.CarbonDioxideShare, flour.LeaveningPerFlour]
                    );
                    Check(PowderRelease.DoubleActing.ShareAt(temperature), share => [share.Low, share.High]);
                    Check(Carbonate.BakersAmmonia.InPlaceOf(Carbonate.BakingSoda with { CarbonDioxideByAcid = number }, soda), mass =>
                        [mass.Grams]
                    );
                    Check(CarbonDioxide.DryVolume(soda, temperature, pressure), volume => [volume.Litres]);
                    YeastFactors factors = new("own", number, 0.33, "by hand");
                    Check(factors.Convert(soda, YeastKind.Fresh, YeastKind.ActiveDry), mass => [mass.Grams]);
                    Check(factors.Convert(soda, YeastKind.ActiveDry, YeastKind.Instant), mass => [mass.Grams]);
                }
            );

    [Fact]
    public void Gas_and_steam_survive_anything() =>
        Gen.Select(AnyAmount, AnyAmount, AnyMass, AnyTemperature, AnyTemperature, AnyPressure, AnyVolume, AnyNumber)
            .Sample(
                (gas, air, water, from, to, pressure, hollow, metres) =>
                {
                    Check(GasCell.VolumeOf(gas, from, pressure), volume => [volume.Litres]);
                    Check(GasCell.Expansion(from, to, pressure), times => [times]);
                    Check(GasCell.VapourShare(from, pressure), share => [share]);
                    Check(DissolvedCarbonDioxide.InBubbles(gas, air, water, from, pressure), inside => [inside.Moles]);
                    Check(BoilingWater.At(metres), boiling => [boiling.Celsius]);
                    Check(TimeControl.MinutesUntilDiscarded(from, to), minutes => [minutes]);
                    Check(StandardAtmosphere.PressureAt(metres), found => [found.Pascals]);
                    Check(StandardAtmosphere.PressureAt(metres, AltitudeKind.Geopotential), found => [found.Pascals]);
                    Check(SteamPocket.WaterToFill(hollow, pressure), mass => [mass.Grams]);
                    Check(SteamPocket.SteamFrom(water, pressure), volume => [volume.Litres]);
                    Check(SteamPocket.ShareOfWater(hollow, Doughs.Popovers, water, pressure), share => [share]);
                }
            );

    [Fact]
    public void Yeast_survives_anything() =>
        Gen.Select(AnyFormula, AnyMass, AnyTemperature, AnyTemperature, AnyPressure, AnyNumber, AnyNumber)
            .Sample(
                (formula, dough, known, planned, pressure, minutes, number) =>
                {
                    Check(YeastGas.Made(formula, dough, known, minutes, YeastGasModel.Default), gas =>
                        [gas.Low.Moles, gas.Typical.Moles, gas.High.Moles]
                    );
                    Check(ProofTime.Minutes(formula, known, number, pressure, 0.7, YeastGasModel.Default), Ends);
                    Check(ProofTime.Minutes(formula, known, 2, pressure, number, YeastGasModel.Default), Ends);
                    Check(EquivalentSchedule.Minutes(minutes, known, planned, number, YeastGasModel.Default), Ends);
                    Check(EquivalentSchedule.YeastRatio(minutes, known, number, planned, YeastGasModel.Default), Ends);

                    static double[] Ends(Band<double> band) => [band.Low, band.Typical, band.High];
                }
            );

    [Fact]
    public void Gas_budgets_survive_anything() =>
        Gen.Select(AnyFormula, AnyMass, AnyNumber, AnyTemperature, AnyTemperature, AnyPressure)
            .Sample(
                (formula, dough, minutes, bench, oven, pressure) =>
                {
                    var length = Math.Min(minutes, 2_000);
                    BakeStage[] stages =
                    [
                        new("Rise", new(length, length, length), bench, false, true),
                        new("Bake", new(20, 20, 20), oven, true),
                    ];
                    Check(GasBudget.Of(formula, dough, stages, Temperature.FromCelsius(25), pressure, GasBudgetSettings.Default), budget =>
                        [
                            budget.AtSet.Low.Litres,
                            budget.AtSet.High.Litres,
                            budget.Steam.ShareOfWater,
                            budget.Held.SpecificVolume.Low,
                            budget.Held.SpecificVolume.High,
                            .. budget.Course.SelectMany(point =>
                                new[] { point.Gas.Low.Litres, point.Gas.High.Litres, point.Held.Low.Litres, point.Held.High.Litres }
                            ),
                        ]
                    );
                },
                iter: 300
            );

    [Fact]
    public void Costs_survive_anything() =>
        Gen.Select(AnyMass, AnyMass, AnyMoney, AnyMoney, AnyNumber, AnyNumber)
            .Sample(
                (bought, used, price, cost, number, portions) =>
                {
                    PurchaseUnit unit = new("pack", bought, price);
                    Check(unit.PricePerKilogram, Amount);
                    Check(unit.PacksFor(used), packs => [packs]);
                    Check(unit.CostOfPacks(used), Amount);
                    Check(unit.CostOf(used), Amount);
                    Check(SellingPrice.For(cost, number), Amount);
                    Check(SellingPrice.FoodCostPercent(cost, price), percent => [percent]);
                    Check(PortionFactor.Of(number, bought, portions, used), factor => [factor]);
                    Check(YieldTest.FromTrim(bought, used), test => [test.Share, test.Factor]);
                    Check(YieldTest.Of(bought, used), test => [test.Share, test.Factor]);
                    if (YieldTest.Of(bought, used).TryGet(out var fine, out _))
                    {
                        Check(fine.ToBuy(used), mass => [mass.Grams]);
                        Check(fine.EdiblePortionPrice(price), Amount);
                    }
                    var batch = Scaling.FromFlour(Doughs.Worksheet, Mass.FromGrams(1000), Scales.Common).Value;
                    Check(BatchCost.Of(batch, 3, batch.Lines.ToDictionary(line => line.Ingredient.Id, _ => unit)), total =>
                        [(double)total.Total.Amount, (double)total.PerPiece.Amount]
                    );

                    static double[] Amount(Money money) => [(double)money.Amount];
                }
            );

    private static WeighedIngredient Of(string id, Mass mass) => new(IngredientCatalog.Get(id), mass);

    private static void Check<T>(Computed<T> computed, Func<T, double[]> numbers)
        where T : notnull
    {
        if (!computed.TryGet(out var value, out var why))
        {
            Assert.NotEqual("", why.Code);
            Assert.NotEqual("", why.Message);
            Assert.NotEqual("", why.Remedy);
            Assert.DoesNotContain("∞", why.Message, StringComparison.Ordinal);
            return;
        }
        Assert.All(numbers(value), number =>
            Assert.True(double.IsFinite(number) && Math.Abs(number) <= SaneSize, $"{typeof(T).Name}: {number}")
        );
        Assert.NotNull(computed.Explanation);
    }
}
