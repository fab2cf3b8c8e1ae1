using ClassKit.Baking.GasBudgets;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Tests.Packs;

/// <summary>Which steps press the gas out of a dough, by what they are called. Common practice, no source.</summary>
public sealed class PressedOutTests
{
    [Theory]
    [InlineData("Punch down", true)]
    [InlineData("Knocking back", true)]
    [InlineData("Shape", true)]
    [InlineData("Pre-shape", true)]
    [InlineData("Divided and rounded", true)]
    [InlineData("Rolling out", true)]
    [InlineData("Stirred down", true)]
    // What holds such a word as a part of a longer one is something else.
    [InlineData("Unmould the tins", false)]
    [InlineData("Undivided attention", false)]
    [InlineData("Shapeless, as it is", false)]
    [InlineData("Doorknocker", false)]
    public void A_step_presses_the_gas_out_by_whole_words_of_its_name(string name, bool pressesOut) =>
        Assert.Equal(pressesOut, !Baked(name).Held.Baked.Equals(Baked("Look").Held.Baked));

    private static GasBudget Baked(string name) =>
        ComputedPack.Build(SampleLesson.Of(With(name)), SampleLesson.Class).Value.Comparison[0].PerPiece;

    /// <summary>Buns with a step of a minute before the heat.</summary>
    private static LessonFormula With(string name) =>
        SampleLesson.Buns with
        {
            Steps = [.. SampleLesson.Buns.Steps.SelectMany(step => Before(step, name))],
        };

    private static MethodStep[] Before(MethodStep step, string name) =>
        step.Name == "Bake" ? [SampleLesson.Step(name, 1, 1), step] : [step];
}
