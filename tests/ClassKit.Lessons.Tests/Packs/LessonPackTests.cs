using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Tests.Packs;

public sealed class LessonPackTests
{
    private static readonly ComputedPack Pack = ComputedPack.Build(SampleLesson.Lesson, SampleLesson.Class).Value;

    [Fact]
    public void A_card_makes_the_teams_pieces_with_the_loss()
    {
        // By hand: 6 × 60 g / (1 - 5 %) = 378.95 g of dough, 199.3 % in all → 190.14 g of flour
        var buns = Pack.Cards.Single(card => card.Bread == SampleLesson.Buns);
        Assert.Equal(378.95, buns.Batch.Exact.Grams, 0.005);
        Assert.Equal(190.14, buns.Batch.Flour.Grams, 0.005);
        Assert.Equal(6, buns.Pieces);
        // Of one bread a team makes two, of all others what the class makes of each.
        Assert.Equal(
            [2, 6],
            ComputedPack
                .Build(SampleLesson.Of(SampleLesson.Buns with { TeamMakes = 2 }, SampleLesson.Muffins), SampleLesson.Class)
                .Value.Cards.Select(card => card.Pieces)
        );
    }

    [Fact]
    public void Cards_are_in_the_lessons_order() =>
        Assert.Equal(["buns", "popovers", "muffins"], Pack.Cards.Select(card => card.Bread.Formula.Id));

    [Fact]
    public void Salt_and_leavening_go_on_the_small_scale()
    {
        foreach (var line in Pack.Cards.SelectMany(card => card.Lines))
        {
            var small =
                line.Line.Ingredient.Role is IngredientRole.Salt or IngredientRole.Yeast or IngredientRole.ChemicalLeavening
                || line.Line.Exact.Grams < 20;
            Assert.Equal(small ? 0.1 : 1, line.Line.Resolution.Grams);
        }
    }

    [Fact]
    public void The_requisition_covers_what_the_teams_weigh()
    {
        foreach (var line in Pack.Requisition)
        {
            var weighed =
                Pack.Cards.SelectMany(card => card.Batch.Lines)
                    .Where(batch => batch.Ingredient.Id == line.Ingredient.Id)
                    .Sum(batch => batch.Weighed.Grams) * SampleLesson.Class.Teams;
            Assert.Equal(weighed, line.Mass.Grams, 1e-6);
            Assert.Equal(line.Mass.Grams, line.Uses.Sum(use => use.Mass.Grams), 1e-6);
        }
        Assert.Equal(Pack.Requisition.Count, Pack.Requisition.DistinctBy(line => line.Ingredient.Id).Count());
    }

    [Fact]
    public void Eggs_are_ordered_whole_and_never_too_few()
    {
        var eggs = Pack.Requisition.Single(line => line.Ingredient.Id == "whole_egg");
        Assert.True(eggs.Household!.Mass >= eggs.Mass);
        Assert.DoesNotContain("/", eggs.Household.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_warmed_on_a_card_is_set_by_the_kitchen()
    {
        // By hand with the heats of Geankoplis A.4-1 and ASHRAE (flour 1.84, milk 3.85, egg 3.63, butter 2.4, sugar 1.25 J/(g K)), bowl a
        // tenth: (27 × 579 - 22 × 244 - 4 × 43.6) / 289 = 35 °C
        var buns = Pack.Cards.Single(card => card.Bread == SampleLesson.Buns);
        Assert.Equal(["whole_milk", "unsalted_butter"], buns.Mix.Warmed.Select(part => part.Ingredient.Id));
        Assert.InRange(buns.Mix.Warmed[0].Temperature.Celsius, 34, 36);
        Assert.Equal(27, buns.Mix.Mixed.Typical.Celsius);
        Assert.Null(buns.Mix.OutOfReach);
    }

    [Fact]
    public void In_a_cold_store_room_the_card_says_what_comes_instead()
    {
        // By hand as above: for 35 °C flour and bowl at 12 °C would take milk at 59 °C; nothing is warmed beyond 46 °C: (46 × 289 + 12 ×
        // 244 + 4 × 43.6) / 579 = 28 °C
        var warm = SampleLesson.Of(SampleLesson.Buns with { MixTemperature = Temperature.FromCelsius(35) });
        var pack = ComputedPack.Build(warm, SampleLesson.Class with { KitchenTemperature = Temperature.FromCelsius(12) }).Value;
        Assert.Equal(46, pack.Cards[0].Mix.Warmed[0].Temperature.Celsius);
        Assert.InRange(pack.Cards[0].Mix.Mixed.Typical.Celsius, 28, 29);
        Assert.Contains(pack.Cards[0].Advice, advice => advice.Code == "mix-out-of-reach");
    }

    [Fact]
    public void Allergies_of_the_class_meet_the_formulas()
    {
        Assert.Equal(["egg", "sesame"], Pack.Concerns.Select(concern => concern.Need.Word));
        Assert.Equal([3, 0], Pack.Concerns.Select(concern => concern.Breads.Count(bread => bread.Declared.Count > 0)));
        // What is declared nowhere is shown all the same: yeast's emulsifier is not known.
        Assert.Equal(3, Pack.Concerns[1].Breads.Count);
        Assert.Contains(Pack.Concerns[1].Breads[0].Unknown, unknown => unknown.Ingredient.Role == IngredientRole.Yeast);
        Assert.Equal(["egg", "milk", "wheat"], Pack.Allergens.Select(allergen => allergen.Name));
    }

    [Fact]
    public void Water_boils_earlier_in_a_high_kitchen()
    {
        // US Standard Atmosphere 1976 at 5000 ft and the table of Colorado State University Extension and USDA: 203.0 °F
        var pack = ComputedPack.Build(SampleLesson.Lesson, SampleLesson.Class with { AltitudeMetres = 1524 }).Value;
        Assert.Equal(203.0, pack.BoilingPoint.Fahrenheit, 0.4);
    }

    [Fact]
    public void A_high_kitchen_gets_the_published_ranges()
    {
        Assert.Empty(Pack.AtAltitude);
        var high = ComputedPack.Build(SampleLesson.Lesson, SampleLesson.Class with { AltitudeMetres = 1609 }).Value;
        Assert.Equal(high.Lesson.Formulas.Select(formula => formula.Formula.Id), high.AtAltitude.Select(changed => changed.Original.Id));
        Assert.All(high.AtAltitude, changed => Assert.Equal(changed.Original.Leavening == Leavening.Chemical, changed.Lines.Count > 0));
    }

    [Fact]
    public void Soda_and_powder_count_towards_a_muffins_sodium()
    {
        // USDA sodium of salt, soda and baking powder; by hand for 60 g of 259.5 %: 60 × (1.2 × 0.38758 + 0.8 × 0.2736 + 2.5 × 0.106) /
        // 259.5
        var muffins = Pack.Cards.Single(card => card.Bread == SampleLesson.Muffins);
        Assert.Equal(0.2194, muffins.SodiumPerPiece.Grams, 0.0005);
    }

    [Fact]
    public void Gas_is_counted_from_the_mixing_bowl_to_the_end_of_baking()
    {
        var buns = Pack.Comparison.Single(row => row.Bread == SampleLesson.Buns);
        Assert.Equal(new Band<double>(71, 80.5, 90), buns.Bench);
        Assert.Equal(new Band<double>(18, 19, 20), buns.Oven);
        Assert.Equal("First rise", buns.PerPiece.Course[0].Stage);
        Assert.Equal("Bake", buns.PerPiece.Course[^1].Stage);
    }

    /// <summary>A dough does not go back to the temperature at which it was mixed as it comes out of a proofer.</summary>
    [Fact]
    public void What_comes_out_of_a_proofer_is_as_warm_as_it_was_in_there()
    {
        var course = Pack.Comparison.Single(row => row.Bread == SampleLesson.Buns).PerPiece.Course;

        Assert.All(course.Where(point => point.Stage is "Stir down" or "Fill"), point => Assert.Equal(28, point.Dough.Celsius, 1e-9));
    }

    [Fact]
    public void A_piece_has_its_share_of_the_gas_of_a_hundred_grams_of_flour()
    {
        foreach (var row in Pack.Comparison)
        {
            var share = 60 / row.Bread.Formula.TotalPercent;
            Assert.Equal(row.Per100Flour.AtSet.Typical.Litres * share, row.PerPiece.AtSet.Typical.Litres, 1e-9);
        }
    }

    [Fact]
    public void An_impossible_formula_is_named()
    {
        var bottomless = SampleLesson.Buns with { LossPercent = 100 };
        var why = ComputedPack.Build(SampleLesson.Of(bottomless), SampleLesson.Class).Why!;
        Assert.Equal("loss-out-of-range", why.Code);
        Assert.StartsWith("buns: ", why.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_without_teams_bakes_nothing() =>
        Assert.Equal("no-teams", ComputedPack.Build(SampleLesson.Lesson, SampleLesson.Class with { Teams = 0 }).Why!.Code);

    [Fact]
    public void A_kitchen_in_the_stratosphere_is_explained() =>
        Assert.Equal(
            "altitude-out-of-range",
            ComputedPack.Build(SampleLesson.Lesson, SampleLesson.Class with { AltitudeMetres = 20_000 }).Why!.Code
        );

    [Fact]
    public void What_is_too_little_for_the_scale_is_said_on_the_card()
    {
        var coarse = SampleLesson.Class with
        {
            PiecesPerTeam = 1,
            ScaleResolution = Mass.FromGrams(5),
            SmallScaleResolution = Mass.FromGrams(2),
        };
        var muffins = ComputedPack.Build(SampleLesson.Lesson, coarse).Value.Cards.Single(card => card.Bread == SampleLesson.Muffins);
        Assert.Contains(muffins.Advice, advice => advice.Code == "below-scale");
    }
}
