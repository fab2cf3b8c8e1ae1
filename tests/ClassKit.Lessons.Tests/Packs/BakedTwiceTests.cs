using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Tests.Packs;

/// <summary>What a bread leaves free while it is out of the oven between two bakes.</summary>
public sealed class BakedTwiceTests
{
    [Fact]
    public void What_cools_between_two_bakes_is_out_of_the_oven()
    {
        var muffins = SampleLesson.Muffins with
        {
            Steps =
            [
                .. SampleLesson.Muffins.Steps.TakeWhile(step => step.Name != "Bake"),
                Step("Bake", 20, 200),
                Step("Cool", 30, null) with
                {
                    Work = StepWork.Usual with { People = 0 },
                },
                Step("Wrap", 2, null),
                Step("Reheat", 8, 160) with
                {
                    Work = StepWork.Usual with { People = 0, Reheats = true },
                },
            ],
        };

        Assert.Equal([200, null, null, 160], Dials(muffins));
    }

    [Fact]
    public void What_is_pierced_between_two_bakes_keeps_its_place()
    {
        var shells = SampleLesson.Muffins with
        {
            Steps =
            [
                .. SampleLesson.Muffins.Steps.TakeWhile(step => step.Name != "Bake"),
                Step("Bake", 20, 200),
                Step("Pierce", 1, null),
                Step("Dry", 8, 160),
            ],
        };

        Assert.Equal([200, 160, 160], Dials(shells));
    }

    private static double?[] Dials(LessonFormula bread) =>
        [
            .. BenchClasses
                .Of(SampleLesson.Lesson with { Formulas = [bread] }, SampleLesson.Class)
                .Breads[0]
                .Steps.SkipWhile(step => step.Name != "Bake")
                .Select(step => step.Oven?.Temperature.Celsius),
        ];

    private static MethodStep Step(string name, int minutes, double? celsius) =>
        new(
            name,
            SampleLesson.Muffins.Steps[0].Text,
            minutes,
            minutes,
            celsius is { } dial ? Temperature.FromCelsius(dial) : null,
            celsius is null ? null : CookingWay.Oven
        );
}
