using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Stations;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Stations;

/// <summary>Starters that are built before a class.</summary>
public sealed class StarterMixTests
{
    private static readonly Ingredient Water = TapWater.In(Pantry.Shipped);

    private static readonly StarterBuild First = new(1, 2, 2, Temperature.FromCelsius(26), 6) { WettedWith = Water };

    /// <summary>
    /// Two breads, each with a starter of its own; the second is built in two stages, and so is mixed three times in all.
    /// </summary>
    [Fact]
    public void Each_bread_has_its_own_build_and_each_stage_its_own_mixing()
    {
        var pack = ComputedPack
            .Build(
                SampleLesson.Of(
                    Levain("wheat", "Sourdough starter, 100 %", new(1, 4, 4, Temperature.FromCelsius(24), 10) { WettedWith = Water }),
                    Levain(
                        "rye",
                        "Rye sourdough starter, 100 %",
                        new(1, 1, 1, Temperature.FromCelsius(28), 4) { Earlier = First, WettedWith = Water }
                    )
                ),
                SampleLesson.Class
            )
            .Value;

        var mixes = StarterMix.Of(pack.Cards, null);

        Assert.Equal(
            ["wheat 1 of 1, 10 h", "rye 1 of 2, 6 h", "rye 2 of 2, 4 h"],
            mixes.Select(mix =>
                FormattableString.Invariant($"{mix.Card.Bread.Formula.Id} {mix.Stage} of {mix.Stages}, {mix.Build.Hours} h")
            )
        );
        Assert.Equal(["ap_flour", "rye_flour", "rye_flour"], mixes.Select(mix => mix.ForATeam[1].Ingredient.Id));
        // What one stage gives is enough for the next one's ripe starter.
        Assert.True(mixes[1].ForATeam.Sum(part => part.Mass.Grams) >= mixes[2].ForATeam[0].Mass.Grams);
        // Ripe starter is bought for the first stage alone, flour and water for both.
        var rye = pack.Requisition.Single(line => line.Ingredient.Id == "rye_flour").Mass.Grams;
        Assert.Equal(rye, mixes.Skip(1).Sum(mix => mix.InAll[1].Mass.Grams), 1e-6);
        Assert.Equal(
            pack.Requisition.Single(line => line.Ingredient.StarterOf?.Id == "rye_flour").Mass.Grams,
            mixes[1].InAll[0].Mass.Grams,
            1e-6
        );
    }

    private static LessonFormula Levain(string id, string starter, StarterBuild build)
    {
        var bread = SampleLesson.Bread(
            id,
            Leavening.Yeast,
            "roll",
            3,
            26,
            220,
            220,
            [SampleLesson.Step("Mix", 4, 6), SampleLesson.Step("Bake", 15, 18, 220)],
            ("bread_flour", 80),
            ("water", 46)
        );
        return bread with
        {
            StarterBuild = build,
            Formula = bread.Formula with { Lines = [.. bread.Formula.Lines, new(Pantry.Shipped.Called(starter).Single(), 40)] },
        };
    }
}
