using ClassKit.Baking.Quantities;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Allergies;

/// <summary>Milk and egg have their four hours out of the cold, FDA Food Code 3-501.19, whatever else is heated on the bench.</summary>
public sealed class HotStepTests
{
    [Theory]
    [InlineData(90)]
    [InlineData(160)]
    [InlineData(220)]
    public void A_hot_tin_on_the_bench_takes_no_limit_away(double celsius)
    {
        var written = LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model!;
        var bread = written.Formulas[2];
        var heated = bread with
        {
            Steps = [bread.Steps[0] with { Temperature = Temperature.FromCelsius(celsius) }, .. bread.Steps.Skip(1)],
        };
        Assert.False(heated.Steps[0].IsCooking);

        var left = Left(written with { Formulas = [heated], Demonstrations = [] });

        Assert.InRange(left ?? int.MaxValue, 1, 240);
    }

    private static int? Left(Lesson lesson) =>
        BenchClasses
            .Of(lesson, ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model!)
            .Breads[0]
            .Steps[0]
            .BakedWithinMinutes;
}
