using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Guarantees;
using ClassKit.Exercises.Proving;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Tests.Variants;

public sealed class VariantGeneratorTests
{
    [Fact]
    public void Every_draw_keeps_the_constraints_and_the_steps_of_its_ranges()
    {
        var generator = VariantGenerator.For(WaterExercise.Make("=AND(water>=350,water<=600)"));
        for (ulong seed = 0; seed < 200; seed++)
        {
            var variant = generator.Draw(new(seed)).Variant!;

            Assert.InRange(variant.Answers["water"], 350, 600);
            Assert.Equal(0, variant.Givens["flour"] % 50);
            Assert.Contains(variant.Givens["hydration"], (decimal[])[0.60m, 0.65m, 0.70m, 0.75m]);
            Assert.Equal((double)(variant.Givens["flour"] * variant.Givens["hydration"]), variant.Answers["water"], 1e-9);
        }
    }

    [Theory]
    [InlineData("=water>5000", "=flour/hydration", 1, typeof(Breach.ConstraintBroken))]
    [InlineData("=TRUE", "=flour*hydration+1", 1, typeof(Breach.CloseToRight))]
    [InlineData("=1/0", "=flour/hydration", 1, typeof(Breach.ConstraintBroken))]
    [InlineData("=TRUE", "=flour/hydration", 5000, typeof(Breach.CloseToRight))]
    public void An_exercise_that_cannot_be_drawn_says_which_rule_is_in_the_way(
        string constraint,
        string misconception,
        double tolerance,
        Type reason
    )
    {
        var drawing = VariantGenerator.For(WaterExercise.Make(constraint, 900, misconception, tolerance)).Draw(new(1));

        Assert.Null(drawing.Variant);
        Assert.IsType(reason, drawing.Rejections[0].First);
        Assert.Equal(
            reason == typeof(Breach.ConstraintBroken) ? new(Constraint: constraint) : new Culprit(Part: "water", Misconception: "divided"),
            drawing.Rejections[0].First.Culprit
        );
        Assert.Equal(VariantGenerator.MostAttempts, drawing.Rejections.Sum(rejection => rejection.Count));
    }

    [Fact]
    public void Fresh_inputs_differ_from_the_dealt_ones_and_from_each_other()
    {
        var exercise = WaterExercise.Make();
        var dealt = VariantGenerator.For(exercise).Draw(new(3)).Variant!;
        var fresh = new FreshInputs(exercise, new(4)).For(dealt.Givens);

        Assert.Equal(FreshInputs.DefaultCount, fresh.Count);
        Assert.Equal(
            FreshInputs.DefaultCount + 1,
            fresh.Append(dealt).Select(variant => VariantKey.Of(exercise, variant.Givens)).Distinct().Count()
        );
    }

    [Fact]
    public void A_small_exercise_gives_as_many_fresh_inputs_as_it_has()
    {
        // Flour 500 only, four hydrations: three are left beside the dealt one.
        var exercise = WaterExercise.Make("=TRUE", flourTo: 500);
        var dealt = VariantGenerator.For(exercise).Draw(new(3)).Variant!;

        Assert.Equal(3, new FreshInputs(exercise, new(4)).For(dealt.Givens).Count);
    }

    [Fact]
    public void A_space_small_enough_is_counted_exactly()
    {
        // 9 flours × 4 hydrations; water of at least 400 g leaves out 500 g at 60 to 75 %, 550 at 60 to 70, 600 at 60 and 65, 650 at 60.
        var space = VariantSpace.Of(VariantGenerator.For(WaterExercise.Make("=water>=400")));

        Assert.Equal(new VariantSpace(36 - 4 - 3 - 2 - 1, true), space);
    }

    [Fact]
    public void A_large_space_is_estimated_and_said_to_be()
    {
        var exercise = WaterExercise.Make("=TRUE") with
        {
            Givens = [new("flour", "Flour", "g", 500, 1499, 1), new("hydration", "Hydration", "%", 0.600m, 0.799m, 0.001m)],
            Effort = new(0, 1000),
        };

        var space = VariantSpace.Of(VariantGenerator.For(exercise));

        Assert.False(space.IsExact);
        Assert.InRange(space.Count, 150_000, 200_000);
    }

    [Fact]
    public void A_stated_band_of_effort_is_kept()
    {
        var usual = VariantGenerator.For(WaterExercise.Make("=TRUE") with { Effort = null });
        var middle = (usual.Band!.Low + usual.Band.High) / 2;
        var generator = VariantGenerator.For(WaterExercise.Make("=TRUE") with { Effort = new(0, middle) });

        for (ulong seed = 0; seed < 50; seed++)
            Assert.InRange(EffortMeasure.Of(generator.Draw(new(seed)).Variant!), 0, middle);
        Assert.Contains(RejectionProfile.Of(generator, 500).Rejections, rejection =>
            rejection.First is Breach.UnevenEffort { Allowed: var allowed } && allowed == new EffortBand(0, middle)
        );
    }

    [Fact]
    public void Names_in_keys_may_be_written_in_capitals()
    {
        var exercise = WaterExercise.Make();
        exercise = exercise with { Parts = [exercise.Parts[0] with { Key = CellFormula.Of("=FLOUR*Hydration") }] };

        Assert.NotNull(VariantGenerator.For(exercise).Draw(new(1)).Variant);
    }
}
