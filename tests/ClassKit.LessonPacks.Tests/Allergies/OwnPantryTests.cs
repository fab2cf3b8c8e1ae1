using ClassKit.Baking.Allergens;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Allergies;

/// <summary>A kitchen's own row stands in the place of the shipped one, also where something is taken instead. Common practice, no source.</summary>
public sealed class OwnPantryTests
{
    [Fact]
    public void What_is_taken_instead_holds_what_the_kitchens_own_row_says()
    {
        Assert.DoesNotContain(Soya, StandIns(Pantry.Shipped, "egg", "soya").SelectMany(standIn => standIn.Brings));
        Assert.All(StandIns(OfSoyOil, "egg", "soya").Where(TakesOil), standIn => Assert.Contains(Soya, standIn.Brings));
        Assert.Contains(StandIns(OfSoyOil, "egg", "soya"), TakesOil);
    }

    [Fact]
    public void What_the_kitchens_own_row_holds_is_never_offered_to_whoever_keeps_away_from_it()
    {
        var milkAndSoya = Butter with { Lines = [.. Butter.Lines.Select(line => line with { Ingredient = WithSoya(line.Ingredient) })] };

        Assert.Contains(StandIns(Pantry.Shipped, milkAndSoya, "soya"), TakesOil);
        Assert.DoesNotContain(StandIns(OfSoyOil, milkAndSoya, "soya"), TakesOil);
    }

    [Fact]
    public void A_flour_that_the_kitchen_alone_knows_ends_no_pack()
    {
        var einkorn = Found("ap_flour") with { Id = "einkorn_flour", Name = "Einkorn flour" };
        var profile = Profile(Pantry.Shipped.With([einkorn])) with { Flours = [einkorn.Id] };

        var pack = ComputedPack.Build(Lesson(Butter), profile).Value;

        Assert.Contains(pack.Adaptations, adaptation => adaptation.What.Contains("buy it", StringComparison.Ordinal));
    }

    private static Allergen Soya => Assert.Single(AllergenWords.Find("soya")!.Means);

    private static Pantry OfSoyOil => Pantry.Shipped.With([WithSoya(Found("vegetable_oil"))]);

    private static Ingredient WithSoya(Ingredient ingredient) =>
        ingredient with
        {
            Allergens = [.. ingredient.Allergens.Append(Soya).Distinct()],
        };

    private static Ingredient Found(string id) => IngredientCatalog.Get(id);

    private static bool TakesOil(StandIn standIn) => standIn.Published.TakesIds.Contains("vegetable_oil");

    /// <summary>The breads' own formula with butter for their fat, so that a stand-in is published for it.</summary>
    private static BakersFormula Butter =>
        Written.Formulas[2].Formula with
        {
            Lines = [.. Written.Formulas[2].Formula.Lines.Append(new(Found("unsalted_butter"), 10))],
        };

    private static Lesson Written => LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model!;

    private static Lesson Lesson(BakersFormula formula) =>
        Written with
        {
            Formulas = [Written.Formulas[2] with { Formula = formula }],
            Demonstrations = [],
        };

    private static ClassProfile Profile(Pantry pantry, params string[] needs) =>
        ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model! with
        {
            Pantry = pantry,
            Allergies = [.. needs.Select(need => AllergenWords.Find(need)!)],
        };

    private static IEnumerable<StandIn> StandIns(Pantry pantry, params string[] needs) => StandIns(pantry, Butter, needs);

    private static IEnumerable<StandIn> StandIns(Pantry pantry, BakersFormula formula, params string[] needs) =>
        ComputedPack
            .Build(Lesson(formula), Profile(pantry, needs))
            .Value.Concerns.SelectMany(concern => concern.Breads)
            .SelectMany(bread => bread.Declared)
            .Select(concerned => concerned.StandIn)
            .OfType<StandIn>();
}
