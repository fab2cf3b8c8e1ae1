using ClassKit.Baking.Chemistry;
using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.GasBudgets;

/// <summary>Leavenings besides fresh yeast, soda and the usual powder; the chemistry is stoichiometry with IUPAC atomic weights.</summary>
public sealed class MoreLeaveningTests
{
    private static readonly BakeStage[] Baked = [new("Bake", new(12, 12, 12), Temperature.FromCelsius(190), true)];

    /// <summary>NH4HCO3 79.055 g/mol gives one CO2 of 44.009: 0.5567 of its mass, and heat alone does it.</summary>
    [Fact]
    public void Bakers_ammonia_gives_all_its_gas_in_the_heat()
    {
        var ammonia = Source(GasSourceKind.Ammonia, ("ammonium_bicarbonate", 1));

        Assert.Equal(1.0 / 79.055, ammonia.SetAmount.Typical.Moles, 1e-6);
        Assert.Equal(0, ammonia.BenchAmount.High.Moles);
    }

    /// <summary>
    /// KHCO3 100.114 g/mol for NaHCO3 84.006: as many molecules, from a sixth less gas for a gram. Cream of tartar 2.24 to 1 of soda: 4 g
    /// of it are more than enough.
    /// </summary>
    [Fact]
    public void Potassium_bicarbonate_meets_acid_molecule_for_molecule() =>
        Assert.Equal(
            1.0 / 100.114,
            Source(GasSourceKind.Soda, ("potassium_bicarbonate", 1), ("cream_of_tartar", 4)).SetAmount.Typical.Moles,
            1e-5
        );

    /// <summary>
    /// 21 CFR 137.180: self-rising flour gives at least 0.5 % of its mass in carbon dioxide: 0.5 g from 100 g, 11.36 mmol.
    /// </summary>
    [Fact]
    public void Self_rising_flour_brings_its_own_powder()
    {
        var formula = Doughs.Of("scones", Leavening.Chemical, ("self_rising_flour", 100), ("whole_milk", 60));
        var powder = Budget(formula, formula.TotalPercent).Sources.Single(source => source.Kind == GasSourceKind.BakingPowder);

        Assert.Equal(0.5 / 44.009, powder.SetAmount.Low.Moles, 1e-6);
    }

    /// <summary>
    /// A kitchen's own rows make the gas that they say, under whatever id: 0.7 g of carbon dioxide from 100 g of its flour and 0.1 g from a gram of
    /// its powder.
    /// </summary>
    [Fact]
    public void A_kitchens_own_flour_and_powder_make_gas()
    {
        var flour = Row(
            ("name", "Mill's self-raising flour"),
            ("kind", "flour"),
            ("water", "12"),
            ("gives", "powder"),
            ("gas", "0.7"),
            ("gas at once", "50"),
            ("allergens", "wheat")
        );
        var powder = Row(("name", "Second powder"), ("kind", "leavening"), ("water", "5"), ("gives", "powder"), ("gas", "10"));
        var formula = new BakersFormula(
            "scones",
            "Scones",
            Leavening.Chemical,
            [new(flour, 100), new(IngredientCatalog.Get("whole_milk"), 60), new(powder, 1)]
        );
        var source = Budget(formula, formula.TotalPercent).Sources.Single(source => source.Kind == GasSourceKind.BakingPowder);

        Assert.Equal((0.7 + 0.1) / 44.009, source.SetAmount.Typical.Moles, 1e-6);

        static Ingredient Row(params (string Column, string Text)[] cells) =>
            IngredientRow
                .Read(column => cells.FirstOrDefault(cell => cell.Column == column).Text ?? (column == "source" ? "its label" : ""))
                .Ingredient!;
    }

    /// <summary>A gram of citric acid, 192.12 g/mol with three hydrogens, takes up 1.31 g of soda; monocalcium phosphate 0.8 g by its trade value.</summary>
    [Theory]
    [InlineData("citric_acid", 1, 1)]
    [InlineData("citric_acid", 0.5, 0.656)]
    [InlineData("monocalcium_phosphate", 1, 0.8)]
    [InlineData("cream_of_tartar", 1, 0.45)]
    public void Every_acid_of_the_table_meets_soda(string acid, double percent, double used) =>
        Assert.Equal(used / 84.006, Source(GasSourceKind.Soda, ("baking_soda", 1), (acid, percent)).SetAmount.Typical.Moles, 1e-5);

    /// <summary>What the table says of what ships is what the chemistry has of it.</summary>
    [Fact]
    public void The_table_and_the_chemistry_name_one_value()
    {
        Assert.Equal(PowderRelease.Phosphate.BenchShare, IngredientCatalog.Get("phosphate_powder").Raises!.BenchShare);
        Assert.Equal(PowderRelease.Phosphate.BenchShare, IngredientCatalog.Get("self_rising_flour").Raises!.BenchShare);
        Assert.Equal(SelfRisingFlour.UsualShare, IngredientCatalog.Get("self_rising_flour").Raises!.GasShare);
        Assert.Equal(LeaveningAcid.CreamOfTartar.NeutralizingValue, IngredientCatalog.Get("cream_of_tartar").NeutralizingValue);
        Assert.Equal(
            LeaveningAcid.MonocalciumPhosphate.NeutralizingValue,
            IngredientCatalog.Get("monocalcium_phosphate").NeutralizingValue
        );
    }

    /// <summary>Monocalcium phosphate acts at mixing, SAS and SALP wait for heat: H. McGee, On Food and Cooking (2004).</summary>
    [Fact]
    public void A_phosphate_powder_is_ahead_of_a_double_acting_one_on_the_bench_and_not_in_the_end()
    {
        var (phosphate, doubled) = (
            Source(GasSourceKind.BakingPowder, ("phosphate_powder", 3)),
            Source(GasSourceKind.BakingPowder, ("baking_powder", 3))
        );

        Assert.True(phosphate.BenchAmount.Low > doubled.BenchAmount.High);
        Assert.Equal(doubled.SetAmount, phosphate.SetAmount);
    }

    /// <summary>Yeast and powder in one dough: each makes what it makes alone.</summary>
    [Fact]
    public void Mixed_leavenings_add_up()
    {
        var mixed = Budget(
            Doughs.Of("mixed", Leavening.Yeast, ("ap_flour", 100), ("water", 60), ("instant_yeast", 1), ("baking_powder", 2)),
            163
        );

        Assert.Equal([GasSourceKind.Air, GasSourceKind.Yeast, GasSourceKind.BakingPowder], mixed.Sources.Select(source => source.Kind));
        // 2 g of powder, 12 % of it at the least, US trade minimum: 0.24 g.
        Assert.Equal(0.24 / 44.009, mixed.Sources[2].SetAmount.Low.Moles, 1e-6);
    }

    /// <summary>
    /// By hand, in the Guild's layout: 45 of a starter at 80 % are 25 of flour and 20 of water; with 75 of flour and 48 of water the dough
    /// has 68 % of water.
    /// </summary>
    [Fact]
    public void The_flour_of_a_starter_is_inside_the_hundred_per_cent()
    {
        var rye = Rye;

        Assert.Equal(100, rye.FlourPercent, 1e-9);
        Assert.Equal(68, DoughWater.AddedLiquidPercent(rye), 1e-9);
        // Salt has 0.2 % of water.
        Assert.Equal(68 + 0.0036, DoughWater.EffectivePercent(rye), 1e-9);
    }

    [Fact]
    public void What_a_starter_makes_and_a_dough_without_gluten_holds_is_not_predicted()
    {
        Assert.False(Budget(Rye, 100).IsGasPredicted);
        Assert.False(Budget(Rye, 100).Held.Holding.IsPredicted);
        var rice = Budget(Doughs.Of("rice", Leavening.Yeast, ("rice_flour", 100), ("water", 90), ("instant_yeast", 1.5)), 100);
        Assert.Equal((true, false), (rice.IsGasPredicted, rice.Held.Holding.IsPredicted));
        // Muffins of rice alone have been measured (Korean J. Food Preserv. 31 (2024) 256), batters of mixed flours without gluten, with
        // and without gums, in no publication that was found.
        Assert.False(
            Budget(
                Doughs.Of(
                    "rice_muffins",
                    Leavening.Chemical,
                    ("rice_flour", 100),
                    ("whole_milk", 80),
                    ("whole_egg", 40),
                    ("baking_powder", 4)
                ),
                100
            ).Held.Holding.IsPredicted
        );
    }

    /// <summary>
    /// Published specific gravities: 0.80 for layer cakes to 0.90 for pound cakes, 0.50 for a génoise, 0.46 to 0.48 for a sponge (Bake
    /// magazine, article 11566; Baking Business, Bakers Dictionary).
    /// </summary>
    [Theory]
    [InlineData(0.85)]
    [InlineData(0.50)]
    [InlineData(0.47)]
    public void A_batter_is_as_light_as_its_specific_gravity(double gravity)
    {
        var cake = Doughs.Of("sponge", Leavening.Steam, ("cake_flour", 100), ("whole_egg", 160), ("sugar", 100));
        var air = BatterAir.ShareOf(cake, BatterAir.Around(gravity));
        var gasFree = DoughVolume.GasFree(cake, Mass.FromGrams(100)).Millilitres;

        Assert.Equal(gravity, 100 / (gasFree / (1 - air.Typical)), 1e-9);
        Assert.True(air.Low < air.Typical && air.Typical < air.High);
    }

    /// <summary>
    /// A foam has nothing but air, and a batter of 0.48 is 2.6 times what it would be without: 1 / 0.48 over some 0.8 mL/g.
    /// </summary>
    [Fact]
    public void A_foam_rises_by_its_air_and_has_no_hollow()
    {
        var cake = Doughs.Of("sponge", Leavening.Steam, ("cake_flour", 100), ("whole_egg", 160), ("sugar", 100));
        var settings = GasBudgetSettings.Default with
        {
            AirShare = BatterAir.ShareOf(cake, BatterAir.FoamSpecificGravity),
            Holding = GasHolding.AsWritten(CrumbStructure.Foam, cake),
        };
        var budget = GasBudget.Of(cake, Mass.FromGrams(100), Baked, Temperature.FromCelsius(24), Pressure.Standard, settings).Value;

        Assert.InRange(budget.GasFreeVolume.Millilitres + budget.Held.OnBench.Typical.Millilitres, 100 / 0.55, 100 / 0.45);
        Assert.Equal(0, budget.Course[^1].Steam.High.Litres);
        Assert.True(budget.Held.Baked.Typical > budget.Held.OnBench.Typical);
    }

    private static BakersFormula Rye =>
        new(
            "rye",
            "Rye",
            Leavening.Yeast,
            [
                new(IngredientCatalog.Get("rye_flour"), 75),
                new(IngredientCatalog.Get("water"), 48),
                new(Pantry.Shipped.Called("Rye sourdough starter, 80 %").Single(), 45),
                new(IngredientCatalog.Get("salt"), 1.8),
            ]
        );

    /// <summary>In 100 g of flour with water and what is said.</summary>
    private static GasSource Source(GasSourceKind kind, params (string Ingredient, double Percent)[] leavening)
    {
        var formula = Doughs.Of("dough", Leavening.Chemical, [("ap_flour", 100), ("water", 60), .. leavening]);
        return Budget(formula, formula.TotalPercent).Sources.Single(source => source.Kind == kind);
    }

    private static GasBudget Budget(BakersFormula formula, double grams) =>
        GasBudget
            .Of(formula, Mass.FromGrams(grams), Baked, Temperature.FromCelsius(24), Pressure.Standard, GasBudgetSettings.Default)
            .Value;
}
