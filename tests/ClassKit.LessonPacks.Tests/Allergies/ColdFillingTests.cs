using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Allergies;

/// <summary>What is filled in or poured over behind the last cooking has its four hours too: FDA Food Code 3-501.19(B).</summary>
public sealed class ColdFillingTests
{
    [Theory]
    [InlineData("Fill with custard.", true)]
    [InlineData("Pour the milk over.", true)]
    [InlineData("Dust with sugar.", false)]
    [InlineData("Let cool on a rack.", false)]
    public void A_step_behind_the_cooking_that_names_what_is_kept_cold_has_its_limit(string text, bool isLimited)
    {
        var steps = Steps(text);

        // Four hours in a kitchen warmer than 21 °C, less the tasting, at whose end the rest of it goes.
        Assert.Equal(isLimited ? 240 - Written.SetAside.TastingMinutes : null, steps[^1].ServedWithinMinutes);
        Assert.All(steps.SkipLast(1), step => Assert.Null(step.ServedWithinMinutes));
        Assert.Null(steps[^1].BakedWithinMinutes);
    }

    private static readonly Lesson Written = LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model!;

    private static IReadOnlyList<BenchStep> Steps(string text)
    {
        var bread = Written.Formulas[2];
        Assert.Contains(bread.Ingredients, ingredient => ingredient.Id == "whole_milk");
        var last = bread.Steps.ToList().FindLastIndex(step => step.IsCooking);
        var filled = bread with { Steps = [.. bread.Steps.Take(last + 1), new MethodStep("Fill", TextTemplate.Parse(text), 5, 5, null)] };
        var profile = ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model!;
        Assert.True(profile.KitchenTemperature.Celsius > 21.2);
        return BenchClasses.Of(Written with { Formulas = [filled], Demonstrations = [] }, profile).Breads[0].Steps;
    }
}
