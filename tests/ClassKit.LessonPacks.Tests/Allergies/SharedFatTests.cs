using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Allergies;

/// <summary>Fat that fried one bread carries what is in it to the next. Common practice, no source.</summary>
public sealed class SharedFatTests
{
    private static readonly LessonFormula Fritters = LessonReader
        .Read(Repository.PathOf("lessons", "no-oven-in-the-house"))
        .Model!.Formulas[2];

    private static readonly LessonFormula WithoutEgg = Fritters with
    {
        Formula = Fritters.Formula with
        {
            Id = "plain",
            Title = "Plain fritters",
            Lines = [.. Fritters.Formula.Lines.Where(line => line.Ingredient.Role != IngredientRole.Egg)],
        },
    };

    [Fact]
    public void What_is_fried_in_the_fat_of_a_bread_with_it_is_not_for_whoever_keeps_away_from_it()
    {
        var plain = Of(WithoutEgg);

        Assert.Empty(plain.Declared);
        Assert.Contains("Its fat is that of spoon fritters, and carries it over", AllergyText.Of(plain), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_fried_shares_no_fat() =>
        Assert.Empty(Of(WithoutEgg with { Steps = [.. WithoutEgg.Steps.Where(step => !step.IsCooking)] }).SharesFatWith);

    private static BreadConcern Of(LessonFormula other)
    {
        var lesson = LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model! with { Formulas = [Fritters, other] };
        var profile = ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model! with
        {
            Allergies = [AllergenWords.Find("egg")!],
        };
        return Assert.Single(ComputedPack.Build(lesson, profile).Value.Concerns).Breads[1];
    }
}
