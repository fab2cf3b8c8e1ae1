namespace ClassKit.Exercises.Tests.Variants;

public sealed class VariantDrawerTests
{
    [Fact]
    public void Every_draw_keeps_the_constraints_and_the_steps_of_its_ranges()
    {
        var exercise = WaterExercise.Make("=AND(water>=350,water<=600)");
        for (ulong seed = 0; seed < 200; seed++)
        {
            var variant = VariantDrawer.Draw(exercise, new(seed)).Variant!;

            Assert.InRange(variant.Answers["water"], 350, 600);
            Assert.Equal(0, variant.Givens["flour"] % 50);
            Assert.Contains(variant.Givens["hydration"], (decimal[])[0.60m, 0.65m, 0.70m, 0.75m]);
            Assert.Equal((double)(variant.Givens["flour"] * variant.Givens["hydration"]), variant.Answers["water"], 1e-9);
        }
    }

    [Theory]
    [InlineData("=water>5000", "=flour/hydration", 1, "the constraint =water>5000 does not hold")]
    [InlineData("=TRUE", "=flour*hydration+1", 1, "the misconception divided of part water gives")]
    [InlineData("=1/0", "=flour/hydration", 1, "the constraint =1/0 does not hold")]
    [InlineData("=TRUE", "=flour/hydration", 5000, "the misconception divided of part water gives")]
    public void An_exercise_that_cannot_be_drawn_says_which_rule_is_in_the_way(string constraint, string misconception, double tolerance, string reason)
    {
        var drawing = VariantDrawer.Draw(WaterExercise.Make(constraint, 900, misconception, tolerance), new(1));

        Assert.Null(drawing.Variant);
        Assert.StartsWith(reason, drawing.MainReason, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_that_is_one_of_the_givens_is_never_dealt()
    {
        var exercise = WaterExercise.Make();
        exercise = exercise with { Givens = [.. exercise.Givens, new("jug", "Jug", "g", 325, 325, 0)] };
        for (ulong seed = 0; seed < 200; seed++)
            Assert.NotEqual(325, VariantDrawer.Draw(exercise, new(seed)).Variant!.Answers["water"]);
    }

    [Fact]
    public void Fresh_inputs_differ_from_the_dealt_ones_and_from_each_other()
    {
        var exercise = WaterExercise.Make();
        var dealt = VariantDrawer.Draw(exercise, new(3)).Variant!;
        var fresh = FreshInputs.Draw(exercise, dealt.Givens, new(4));

        Assert.Equal(FreshInputs.DefaultCount, fresh.Count);
        Assert.Equal(FreshInputs.DefaultCount + 1, fresh.Append(dealt).Select(variant => VariantKey.Of(exercise, variant.Givens)).Distinct().Count());
    }

    [Fact]
    public void A_small_exercise_gives_as_many_fresh_inputs_as_it_has()
    {
        // Flour 500 only, four hydrations: three are left beside the dealt one.
        var exercise = WaterExercise.Make("=TRUE", flourTo: 500);
        var dealt = VariantDrawer.Draw(exercise, new(3)).Variant!;

        Assert.Equal(3, FreshInputs.Draw(exercise, dealt.Givens, new(4)).Count);
    }
}
