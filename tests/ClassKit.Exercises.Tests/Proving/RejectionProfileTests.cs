using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Proving;
using ClassKit.Exercises.Tests.Variants;

namespace ClassKit.Exercises.Tests.Proving;

public sealed class RejectionProfileTests
{
    /// <summary>
    /// Water of at least 525 g is left by 900 g of flour at 60 to 75 %, 850 at 65 to 75, 800 at 70 and 75, 750 at 70 and 75, 700 at 75: a
    /// third of 36.
    /// </summary>
    [Fact]
    public void Every_draw_is_kept_or_counted_with_its_reason()
    {
        var profile = RejectionProfile.Of(VariantGenerator.For(WaterExercise.Make("=water>=525") with { Effort = new(0, 1000) }), 3000);

        Assert.Equal(3000, profile.Kept + profile.Rejections.Sum(rejection => rejection.Count));
        Assert.InRange(profile.KeptShare, 0.30, 0.37);
        Assert.Equal("=water>=525", profile.Rejections[0].First.Culprit.Constraint);
        Assert.True((double)(profile.Rejections[0].Givens["flour"] * profile.Rejections[0].Givens["hydration"]) < 525);
        Assert.InRange(profile.LongestRun, 5, 60);
    }

    [Fact]
    public void An_exercise_without_variants_has_a_run_as_long_as_the_trial()
    {
        var profile = RejectionProfile.Of(VariantGenerator.For(WaterExercise.Make("=FALSE")), 250);

        Assert.Equal((0, 250, 0.0), (profile.Kept, profile.LongestRun, profile.KeptShare));
    }
}
