using ClassKit.Baking.GasBudgets;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Tests.Packs;

/// <summary>Only fat and sugar that are beaten pale, with soda or powder, make a creamed batter. Common practice, no source.</summary>
public sealed class CreamedTests
{
    [Theory]
    [InlineData("Cream", true)]
    [InlineData("Creaming", true)]
    [InlineData("Cream butter and sugar", true)]
    [InlineData("Fill with cream", false)]
    [InlineData("Cream cheese filling", false)]
    [InlineData("Ice cream to serve", false)]
    public void A_step_that_creams_makes_a_creamed_batter(string name, bool isCreamed) =>
        Assert.Equal(isCreamed, IsCreamed(SampleLesson.Muffins, name));

    [Theory]
    [InlineData("Cream")]
    [InlineData("Fill with cream")]
    public void No_yeast_dough_is_one(string name) => Assert.False(IsCreamed(SampleLesson.Buns, name));

    private static bool IsCreamed(LessonFormula bread, string name)
    {
        var named = bread with { Steps = [SampleLesson.Step(name, 3, 5), .. bread.Steps] };
        return HoldingOf(named) == GasHolding.CreamedBatter;
    }

    private static GasHolding HoldingOf(LessonFormula bread) =>
        ComputedPack.Build(SampleLesson.Of(bread), SampleLesson.Class).Value.Comparison[0].PerPiece.Held.Holding;
}
