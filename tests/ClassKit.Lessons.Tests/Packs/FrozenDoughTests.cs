using ClassKit.Baking.Cooking;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Tests.Packs;

/// <summary>What nobody has published of a freezer is not computed: how much gas a frozen yeast dough makes, and what it holds.</summary>
public sealed class FrozenDoughTests
{
    private static readonly LessonFormula Buns = SampleLesson.Buns with
    {
        Steps = [.. SampleLesson.Buns.Steps.Select(step => step.Name == "Bake" ? step with { Way = CookingWay.Oven } : step)],
    };

    private static LessonFormula With(string before, MethodStep step) =>
        Buns with
        {
            Steps = [.. Buns.Steps.SelectMany(known => known.Name == before ? [step, known] : new[] { known })],
        };

    private static readonly MethodStep Freeze = SampleLesson.Step("Freeze", 60, 60, -18) with
    {
        Work = StepWork.Usual with { People = 0, Uses = [new(EquipmentKind.Freezer, 1)] },
    };

    private static LeaveningComparison Compared(LessonFormula bread) =>
        ComputedPack.Build(SampleLesson.Of(bread), SampleLesson.Class).Value.Comparison[0];

    [Fact]
    public void A_frozen_dough_is_not_forecast()
    {
        var compared = Compared(With("Second rise", Freeze));

        Assert.Equal((false, false), (compared.IsGasPredicted, compared.IsRisePredicted));
    }

    /// <summary>Frozen when it is baked, a bun has risen as it would have; an hour at -18 °C is no hour of rising.</summary>
    [Fact]
    public void A_baked_bread_is_forecast_as_it_was_baked()
    {
        var (plain, frozen) = (Compared(Buns), Compared(With("Cool", Freeze)));

        Assert.Equal((true, true), (frozen.IsGasPredicted, frozen.IsRisePredicted));
        Assert.Equal(plain.PerPiece.Held.Baked, frozen.PerPiece.Held.Baked);
        Assert.Equal(plain.PerPiece.Made, frozen.PerPiece.Made);
    }
}
