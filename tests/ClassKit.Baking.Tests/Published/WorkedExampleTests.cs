using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Costing;
using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Weighing;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.Published;

/// <summary>Worked examples of handbooks and courses, the source beside each.</summary>
public sealed class WorkedExampleTests
{
    [Theory]
    // Texas Education Agency, "Calculating Baker's Percentages (Key)", 2015; butter stands for shortening
    [InlineData(60, 8, 13.33)]
    [InlineData(60, 2, 3.33)]
    [InlineData(64, 5, 7.81)]
    [InlineData(64, 4.5, 7.03)]
    [InlineData(64, 84, 131.25)]
    [InlineData(15, 6, 40)]
    [InlineData(15, 9, 60)]
    [InlineData(15, 4.25, 28.33)]
    // common practice, no source: 3 lb 8 oz of water on 5 lb 4 oz of flour
    [InlineData(84, 56, 66.67)]
    // college slides on costing, author and year not known: 1 kg of sugar on 5 kg of flour is 20 % (in any unit)
    [InlineData(5, 1, 20)]
    public void Weights_become_percentages(double flour, double other, double percent)
    {
        var formula = Percentages
            .FromWeights(
                "f",
                "F",
                Leavening.Chemical,
                [Of("ap_flour", Mass.FromOunces(flour)), Of("unsalted_butter", Mass.FromOunces(other))]
            )
            .Value;
        Assert.Equal(percent, formula.Lines[1].Percent, 0.005);
    }

    [Theory]
    // johnnyskitchen.us, "Procedure for converting a formula to a new yield": total 377.5 %
    [InlineData(96 * 28.349523125, 25.43 * 28.349523125, 0.005 * 28.35)]
    [InlineData(3000, 794.7, 0.05)]
    public void A_formula_of_377_5_percent_is_converted(double dough, double flour, double tolerance)
    {
        var formula = Doughs.Of("cake", Leavening.Chemical, ("cake_flour", 100), ("sugar", 100), ("whole_egg", 100), ("water", 77.5));
        Assert.Equal(flour, Scaling.FromDough(formula, Mass.FromGrams(dough), Scales.Common).Value.Flour.Grams, tolerance);
    }

    [Fact]
    public void A_forum_quotes_88_F()
    {
        // common practice, no source: dough 78, flour 60, room 70, friction 8 min × 2
        var liquid = DoughTemperature
            .LiquidFor(
                Temperature.FromFahrenheit(78),
                [new("flour", Temperature.FromFahrenheit(60)), new("room", Temperature.FromFahrenheit(70))],
                TemperatureDifference.FromFahrenheitDegrees(16)
            )
            .Value;
        Assert.Equal(88, liquid.Temperature.Fahrenheit, 1e-9);
    }

    [Fact]
    public void Ice_from_the_freezer_takes_up_more_heat()
    {
        // forum.arduino.cc, topic 522736: 30 L from 25 °C to 20 °C with ice of -18 °C on top: 628 050 J over (37.944 + 334 + 83.74) J/g =
        // 1378 g. There L/c is 334/4.187 = 79.8.
        var added = Ice.For(
            Mass.FromKilograms(30),
            Temperature.FromCelsius(25),
            Temperature.FromCelsius(20),
            IceModel.Added,
            Temperature.FromCelsius(-18)
        ).Value;
        Assert.Equal(1378.26, added.Ice.Grams, 4.0);
        Assert.True(
            added.Ice < Ice.For(Mass.FromKilograms(30), Temperature.FromCelsius(25), Temperature.FromCelsius(20), IceModel.Added).Value.Ice
        );
    }

    [Theory]
    // AACC 89-01.01: 0.70 g of solids in 100 g of dough are 2.333 g of compressed, 0.761 g of active dry, 0.737 g of instant yeast
    [InlineData(YeastKind.ActiveDry, 0.761)]
    [InlineData(YeastKind.Instant, 0.737)]
    public void Equal_solids(YeastKind kind, double grams) =>
        Assert.Equal(grams, YeastFactors.EqualSolids.Convert(Mass.FromGrams(0.70 / 0.30), YeastKind.Fresh, kind).Value.Grams, 0.0005);

    [Fact]
    public void The_usdas_yeasts_have_a_third_of_each_others_solids() =>
        Assert.Equal(
            0.3266,
            (1 - IngredientCatalog.Get("fresh_yeast").WaterShare) / (1 - IngredientCatalog.Get("active_dry_yeast").WaterShare),
            0.00005
        ); // USDA SR26: 69.0 and 5.08 % water

    [Theory]
    // bakers' rule, common practice, no source: 2 h at 80 °F, 1 h at 97 °F, 4 h at 63 °F; a doubling for every 17 °F
    [InlineData(97, 60)]
    [InlineData(63, 240)]
    public void Seventeen_degrees_fahrenheit_halve_the_time(double fahrenheit, double minutes)
    {
        var model = YeastGasModel.Default with
        {
            GrowthPerDegree = new(
                YeastGasModel.Default.GrowthPerDegree.Low,
                YeastGasModel.Default.GrowthPerDegree.Low,
                YeastGasModel.Default.GrowthPerDegree.Low
            ),
        };
        Assert.Equal(
            minutes,
            EquivalentSchedule.Minutes(120, Temperature.FromFahrenheit(80), Temperature.FromFahrenheit(fahrenheit), 1, model).Value.Typical,
            minutes * 0.01
        ); // 97 °F is just above the optimum
    }

    [Theory]
    // E. J. Pyler and L. A. Gorton, "Baking Science and Technology", 4th edition, 2008, from memory: every neutralising value of the list
    [InlineData("dcpd", 33)]
    [InlineData("gdl", 45)]
    [InlineData("cream_of_tartar", 45)]
    [InlineData("sapp", 72)]
    [InlineData("mcp", 80)]
    [InlineData("amcp", 83)]
    [InlineData("salp", 100)]
    [InlineData("sas", 104)]
    public void The_trades_neutralising_values(string id, double value) =>
        Assert.Equal(value, LeaveningAcid.All.Single(acid => acid.Id == id).SodaFor(Mass.FromGrams(100)).Value.Grams, 1e-9);

    [Theory]
    // J. Smith, L. Hong-Shum, Food Additives Data Book: parts of pure acid for a part of soda, with the hydrogens that react
    [InlineData(1, MolarMass.PotassiumBitartrate, 2.24)]
    [InlineData(2, MolarMass.SodiumAcidPyrophosphate, 1.32)]
    [InlineData(1, MolarMass.GluconoDeltaLactone, 2.12)]
    [InlineData(8 / 3.0, MolarMass.AnhydrousMonocalciumPhosphate, 1.045)]
    public void Stoichiometry_gives_the_pure_acids(double hydrogens, double molarMass, double parts) =>
        Assert.Equal(parts, 100 / LeaveningAcid.Stoichiometric(hydrogens, molarMass), 0.005);

    [Theory]
    // Stoichiometry with IUPAC atomic weights, summed by hand
    [InlineData(2, MolarMass.TartaricAcid, 111.9)]
    [InlineData(3, MolarMass.CitricAcid, 131.2)]
    [InlineData(1, MolarMass.LacticAcid, 93.3)]
    [InlineData(2, MolarMass.FumaricAcid, 144.7)]
    [InlineData(1, MolarMass.AceticAcid, 139.9)]
    [InlineData(3, MolarMass.SodiumAluminiumSulphate, 104.1)]
    public void Organic_acids(double hydrogens, double molarMass, double value) =>
        Assert.Equal(value, LeaveningAcid.Stoichiometric(hydrogens, molarMass), 0.06);

    [Theory]
    // IUPAC atomic weights, summed by hand
    [InlineData(MolarMass.TartaricAcid, 150.086)]
    [InlineData(MolarMass.CitricAcid, 192.123)]
    [InlineData(MolarMass.MonocalciumPhosphate, 252.064)]
    [InlineData(MolarMass.AnhydrousMonocalciumPhosphate, 234.050)]
    [InlineData(MolarMass.SodiumAcidPyrophosphate, 221.936)]
    [InlineData(MolarMass.SodiumAluminiumSulphate, 242.08)]
    [InlineData(MolarMass.GluconoDeltaLactone, 178.140)]
    [InlineData(MolarMass.DicalciumPhosphate, 172.086)]
    [InlineData(MolarMass.SodiumAluminiumPhosphate, 949.86)]
    [InlineData(MolarMass.SodiumChloride, 58.440)]
    public void Molar_masses(double computed, double grams) => Assert.Equal(grams, computed, 0.009);

    [Theory]
    // The same weights: shares of carbon dioxide, and of ammonia
    [InlineData("baking_soda", 0.5239, 0.2619, 0)]
    [InlineData("potassium_bicarbonate", 0.4396, 0.2198, 0)]
    [InlineData("bakers_ammonia", 0.5567, 0.5567, 0.2154)]
    public void Carbonates(string id, double byAcid, double byHeat, double ammonia)
    {
        var carbonate = Carbonate.All.Single(carbonate => carbonate.Id == id);
        Assert.Equal(
            [byAcid, byHeat, ammonia],
            [carbonate.CarbonDioxideByAcid, carbonate.CarbonDioxideByHeat, carbonate.AmmoniaByHeat],
            (expected, actual) => Math.Abs(expected - actual) < 0.00006
        );
    }

    [Fact]
    public void The_usda_finds_as_much_sodium_in_soda_as_its_formula_has() =>
        Assert.Equal(IngredientCatalog.Get("baking_soda").SodiumShare!.Value, Carbonate.BakingSoda.SodiumShare, 0.0001); // USDA SR28: 27 360 mg/100 g; 22.990/84.006

    [Fact]
    public void Potassium_bicarbonate_takes_a_fifth_more() =>
        Assert.Equal(1.1918, Carbonate.PotassiumBicarbonate.InPlaceOf(Carbonate.BakingSoda, Mass.FromGrams(1)).Value.Grams, 0.0001); // 100.114 / 84.006, by hand

    [Fact]
    public void A_litre_of_carbon_dioxide_weighs_1_96_grams_and_a_real_one_1_98()
    {
        // drak.biz/guide/carbon-dioxide/data: standard density 1.977 kg/m³, molar volume 22.263 m³/kmol against the ideal 22.414
        var ideal = CarbonDioxide.DryVolume(Mass.FromGrams(1.977), Temperature.FromCelsius(0), Pressure.Standard).Value;
        Assert.Equal(1, ideal.Litres, 0.0075);
        Assert.Equal(
            22.414,
            CarbonDioxide.DryVolume(Mass.FromGrams(MolarMass.CarbonDioxide), Temperature.FromCelsius(0), Pressure.Standard).Value.Litres,
            0.0005
        );
    }

    [Fact]
    public void The_law_asks_for_gas()
    {
        // 21 CFR 137.180; Food and Drug Regulations C.R.C. c. 870, B.03.002; Sosland Publishing, Bakers Dictionary, "Baking powder"
        Assert.Equal(
            [0.005, 0.045, 0.10, 0.12],
            [
                SelfRisingFlour.MinimumCarbonDioxideShare,
                SelfRisingFlour.MaximumLeaveningPerFlour,
                BakingPowder.CanadianMinimumShare,
                BakingPowder.UnitedStatesMinimumShare,
            ]
        );
    }

    [Theory]
    // Steam at 101 325 Pa over water at 20 °C (998.2 kg/m³) and at the boil (958.35 kg/m³), IF97 densities
    [InlineData(998.2, 1670)]
    [InlineData(958.35, 1604)]
    public void Water_grows_1600_or_1700_times(double gramsPerLitre, double times) =>
        Assert.Equal(times, SteamPocket.SteamFrom(Mass.FromGrams(gramsPerLitre), Pressure.Standard).Value.Litres, 1.0);

    [Fact]
    public void Steam_is_1_6_percent_denser_than_an_ideal_gas()
    {
        // R T / (M p) at 99.974 °C and 101 325 Pa: 1.6997 m³/kg, by hand
        var real = SteamPocket.SteamFrom(Mass.FromGrams(1), Pressure.Standard).Value.Litres;
        Assert.Equal(1.016, 1.6997 / real, 0.0005);
    }

    [Theory]
    // US Standard Atmosphere (NASA 1976), in two reprints, of which one calls its feet geopotential; they are not, psia; 1 psi = 6894.757
    // Pa (NIST SP 811)
    [InlineData(1000, 14.175, 0.005)]
    [InlineData(2000, 13.664, 0.005)]
    [InlineData(3000, 13.173, 0.005)]
    [InlineData(5000, 12.228, 0.0005)]
    [InlineData(7000, 11.341, 0.005)]
    [InlineData(10_000, 10.108, 0.0005)]
    [InlineData(15_000, 8.297, 0.0005)]
    [InlineData(20_000, 6.759, 0.0005)]
    [InlineData(35_000, 3.468, 0.0015)]
    public void The_standard_atmosphere_in_feet_and_pounds(double feet, double psi, double tolerance) =>
        Assert.Equal(psi, StandardAtmosphere.PressureAt(feet * 0.3048).Value.Pascals / 6894.757, tolerance);

    [Theory]
    // US Standard Atmosphere 1976: the tropopause at 11 000 geopotential metres
    [InlineData(11_000, 22_632.1)]
    public void The_tropopause(double metres, double pascals) =>
        Assert.Equal(pascals, StandardAtmosphere.PressureAt(metres, AltitudeKind.Geopotential).Value.Pascals, 0.1);

    [Theory]
    // USDA SR26, water in g per 100 g
    [InlineData("self_rising_flour", 10.59)]
    [InlineData("low_fat_yogurt", 85.07)]
    [InlineData("skim_yogurt", 85.23)]
    [InlineData("greek_yogurt", 85.10)]
    [InlineData("milk_2_percent", 89.21)]
    [InlineData("milk_1_percent", 89.92)]
    [InlineData("salted_butter", 15.87)]
    [InlineData("salt", 0.2)]
    [InlineData("sugar", 0.02)]
    public void Water_in_what_else_the_usda_lists(string id, double percent) =>
        Assert.Equal(percent, IngredientCatalog.Get(id).WaterShare * 100, 1e-9);

    [Fact]
    public void Household_weights_need_not_add_up()
    {
        // USDA SR28: salt 6.0 g/tsp, but 292 g/cup and not 48 × 6. Its yeast (7.2 g a packet, 9.0 g for the 2 1/4 tsp in it) is too far off
        // for a card: 7 g, as packets say
        var yeast = IngredientCatalog.Get("active_dry_yeast");
        Assert.Equal(7, yeast.Piece!.Grams);
        Assert.Equal(7.0, HouseholdMeasures.OfTeaspoons(yeast, 2.25)!.Value.Grams, 1e-9);
        Assert.Equal(292, HouseholdMeasures.OfCups(IngredientCatalog.Get("salt"), 1)!.Value.Grams, 1e-9);
        Assert.Equal(17, IngredientCatalog.Get("fresh_yeast").Piece!.Grams);
    }

    [Theory]
    // Exact: NIST SP 811, appendix B.8; British measures from the gallon of 4.54609 L
    [InlineData("US customary", 473.176473)]
    [InlineData("US nutrition label", 480)]
    [InlineData("metric cup", 500)]
    [InlineData("imperial", 568.26125)]
    public void A_pint_is_not_a_pint(string name, double millilitres)
    {
        var measures = MeasureDefinition.All.Single(setting => setting.Name == name);
        Assert.True(VolumeNotation.TryParse("1 pint", out var pint, measures));
        Assert.Equal(millilitres, pint.Millilitres, 1e-9);
    }

    [Theory]
    // Armed Forces Recipe Service, General Information A-1: ounces as decimal pounds
    [InlineData(1, 0.06)]
    [InlineData(2, 0.13)]
    [InlineData(3, 0.19)]
    [InlineData(5, 0.31)]
    [InlineData(6, 0.38)]
    [InlineData(7, 0.44)]
    [InlineData(9, 0.56)]
    [InlineData(10, 0.63)]
    [InlineData(11, 0.69)]
    [InlineData(13, 0.81)]
    [InlineData(14, 0.88)]
    [InlineData(15, 0.94)]
    public void Ounces_as_decimal_pounds(double ounces, double pounds) =>
        Assert.Equal(pounds, Math.Round(Mass.FromOunces(ounces).Pounds, 2, MidpointRounding.AwayFromZero), 1e-9);

    [Theory]
    // Armed Forces Recipe Service, A-1: 348 portions of 100; 102 lb on hand of 30 lb; college slides on costing, author and year not known:
    // 18 of 8; college slides on yields, author and year not known: 156 of 85 oz
    [InlineData(100, 348, 3.48)]
    [InlineData(30, 102, 3.40)]
    [InlineData(8, 18, 2.25)]
    [InlineData(85, 156, 1.835)]
    public void Factors(double portions, double wanted, double factor) =>
        Assert.Equal(factor, PortionFactor.Of(portions, Mass.FromPounds(1), wanted, Mass.FromPounds(1)).Value, 0.0005);

    [Theory]
    // BC Cook Articulation Committee, "Yield Testing", example 12: salmon 7.75 kg with 2.75 kg of waste, tuna 750 with 300 drained (waste
    // from memory); college slides on yields, author and year not known: 22 of 24
    [InlineData(7.75, 5.00, 64.5)]
    [InlineData(0.750, 0.450, 60)]
    [InlineData(24, 22, 91.7)]
    public void Yields(double bought, double used, double percent) =>
        Assert.Equal(percent, YieldTest.Of(Mass.FromKilograms(bought), Mass.FromKilograms(used)).Value.Share * 100, 0.05);

    [Theory]
    // college slides on yields, author and year not known: 3 lb at .917 need 3.27 lb; college slides on costing, author and year not known:
    // 10 lb at 75 % need 13.33 lb
    [InlineData(91.7, 3, 3.27)]
    [InlineData(75, 10, 13.33)]
    public void What_to_buy(double yield, double pounds, double buy) =>
        Assert.Equal(
            buy,
            YieldTest.Of(Mass.FromGrams(100), Mass.FromGrams(yield)).Value.ToBuy(Mass.FromPounds(pounds)).Value.Pounds,
            0.005
        );

    [Theory]
    // college slides on costing, author and year not known: 15 lb of mangoes for 25.00, a 45-kg sack for 20.00 (per kg); college slides on
    // recipe costing, author and year not known: 20 lb of flour for 10.50
    [InlineData(15, 25.00, 1.67)]
    [InlineData(20, 10.50, 0.53)]
    public void Price_of_a_pound(double pounds, double price, double perPound) =>
        Assert.Equal(
            (decimal)perPound,
            new PurchaseUnit("case", Mass.FromPounds(pounds), new((decimal)price)).CostOf(Mass.FromPounds(1)).Value.Rounded.Amount
        );

    [Fact]
    public void Apples_at_75_percent_cost_7_47_where_the_course_carries_a_rounded_factor()
    {
        // college slides on recipe costing, author and year not known: 10 lb for $5.60 at 75 %, × 1.333 = $7.465; unrounded 7.4667
        var price = YieldTest.Of(Mass.FromPounds(100), Mass.FromPounds(75)).Value.EdiblePortionPrice(new(5.60m)).Value;
        Assert.Equal(7.47m, price.Rounded.Amount);
        Assert.Equal(7.465m, 5.60m * 1.333m, 3);
    }

    [Fact]
    public void Peppers_for_44_cents()
    {
        // holt.blue/MTH_81, chapter 11: 3 oz used, $1.67/lb, yield 71 %: 3/16 × 1.67 / 0.71 = 0.441
        var buy = YieldTest.Of(Mass.FromGrams(100), Mass.FromGrams(71)).Value.ToBuy(Mass.FromOunces(3)).Value;
        Assert.Equal(0.44m, new PurchaseUnit("pound", Mass.FromPounds(1), new(1.67m)).CostOf(buy).Value.Rounded.Amount);
    }

    [Theory]
    // holt.blue/MTH_81, chapter 11: $173.89 over 200 portions at 25 % is $3.48; $13.07 over 10 at 23 % is $5.68
    [InlineData(173.89, 200, 25, 3.48)]
    [InlineData(13.07, 10, 23, 5.68)]
    public void Selling_prices(double cost, int portions, double percent, double price) =>
        Assert.Equal((decimal)price, SellingPrice.For(new Money((decimal)cost) / portions, percent).Value.Rounded.Amount);

    [Fact]
    public void Stew_at_3_66_has_a_food_cost_of_31_4_percent() =>
        Assert.Equal(31.42, SellingPrice.FoodCostPercent(new(1.15m), new(3.66m)).Value, 0.005); // the same chapter: $1.15 / $3.66

    [Fact]
    public void Three_hundred_and_fifty_pounds_of_ice_are_4_2_tons_of_refrigeration() =>
        Assert.Equal(4.2, Energy.FromBtu(350 * 144.0).Btu / 12_000, 1e-9); // Sosland Publishing, Baking Business, on ice as stored cold

    [Fact]
    public void The_balance_of_ice_lies_within_the_printed_constants() =>
        Assert.InRange(Ice.MeltingKelvins, 333.6 / 4.187, 334.6 / 4.186 + 0.1); // 79.7 to 79.9; 144 Btu/lb gives 80

    private static WeighedIngredient Of(string id, Mass mass) => new(IngredientCatalog.Get(id), mass);
}
