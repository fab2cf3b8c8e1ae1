using ClassKit.Baking.Allergens;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.Ingredients;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;
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
        Assert.Empty(Of(WithoutEgg with { Steps = [.. WithoutEgg.Steps.Where(step => !step.IsCooking)] }).Shares);

    [Theory]
    [InlineData("griddle 200 °C", "Its griddle is that of")]
    [InlineData("pan 200 °C", "Its pan is that of")]
    public void A_plate_carries_over_as_well(string place, string says)
    {
        var fried = Cooked(Fritters, CookingPlace.All.First(each => place.StartsWith(each.Name, StringComparison.Ordinal)).Way);

        Assert.Contains(says, AllergyText.Of(Of(WithoutEgg with { Steps = fried.Steps }, fried)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_holds_it_and_has_no_other_version_is_offered_in_no_fat() =>
        Assert.DoesNotContain(
            "Its fat",
            AllergyText.Of(Of(WithoutEgg) with { Declared = [new(Found("Whole egg"), [], null)] }),
            StringComparison.Ordinal
        );

    /// <summary>The plan's order is of the breads alone: whoever reads the plan learns nothing of who is in the class.</summary>
    [Fact]
    public void What_holds_less_goes_first_whatever_the_class_must_keep_away_from()
    {
        foreach (var needs in new[] { "", "egg", "wheat" })
        {
            var bench = BenchClasses.Of(Lesson(Fritters, WithoutEgg), Profile(needs));

            var order = Assert.Single(bench.CookedFirst);
            Assert.Equal((1, 0, CookingWay.Fryer, true), (order.Bread, order.Before, order.Way, order.EachForItself));
        }
    }

    [Fact]
    public void A_fryer_that_teams_share_keeps_the_order_for_all_of_them()
    {
        var profile = Profile("egg") with
        {
            Appliances = new Dictionary<EquipmentKind, Appliance> { [EquipmentKind.Fryer] = new(2, 2, 15) },
        };

        Assert.False(Assert.Single(BenchClasses.Of(Lesson(Fritters, WithoutEgg), profile).CookedFirst).EachForItself);
    }

    [Fact]
    public void What_is_without_gluten_goes_before_what_holds_it_and_else_none_of_two_that_lack_something_of_each_other()
    {
        var rice = Renamed(WithoutEgg, "rice", line => line.Role == IngredientRole.Flour ? Found("Soy flour, full-fat") : line);
        var eggless = Renamed(WithoutEgg, "soy drink", line => line.Id == Found("Whole milk").Id ? Found("Soy milk") : line);
        Assert.DoesNotContain(rice.Allergens, AllergenWords.Find("gluten")!.Means.Contains);

        Assert.Equal([(0, 1)], Orders(rice, WithoutEgg));
        Assert.Empty(Orders(eggless, WithoutEgg));
    }

    private static IEnumerable<(int, int)> Orders(params LessonFormula[] breads) =>
        BenchClasses.Of(Lesson(breads), Profile("egg")).CookedFirst.Select(order => (order.Bread, order.Before));

    private static Ingredient Found(string name) => IngredientCatalog.All.First(ingredient => ingredient.Name == name);

    private static LessonFormula Renamed(LessonFormula bread, string id, Func<Ingredient, Ingredient> change) =>
        bread with
        {
            Formula = bread.Formula with
            {
                Id = id,
                Title = id,
                Lines = [.. bread.Formula.Lines.Select(line => line with { Ingredient = change(line.Ingredient) })],
            },
        };

    private static LessonFormula Cooked(LessonFormula bread, CookingWay way) =>
        bread with
        {
            Steps = [.. bread.Steps.Select(step => step.IsCooking ? step with { Way = way } : step)],
        };

    private static Lesson Lesson(params LessonFormula[] breads) =>
        LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model! with
        {
            Formulas = breads,
            Demonstrations = [],
        };

    private static ClassProfile Profile(string need) =>
        ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model! with
        {
            Allergies = need.Length == 0 ? [] : [AllergenWords.Find(need)!],
        };

    private static BreadConcern Of(LessonFormula other, LessonFormula? first = null) =>
        Assert.Single(ComputedPack.Build(Lesson(first ?? Fritters, other), Profile("egg")).Value.Concerns).Breads[1];
}
