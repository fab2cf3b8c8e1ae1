using ClassKit.Baking.Allergens;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;
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

    /// <summary>Where nobody has counted the fryers, or the burners under pans and pots, there may be one for all teams.</summary>
    [Theory]
    [InlineData(2, false)]
    [InlineData(4, true)]
    [InlineData(null, false)]
    public void Only_a_fryer_for_each_team_keeps_the_order_within_a_team(int? count, bool eachForItself)
    {
        foreach (var way in SharedPlace.CarryingOver)
        {
            var profile = Profile("egg") with
            {
                Appliances = count is null
                    ? new Dictionary<EquipmentKind, Appliance>()
                    : new Dictionary<EquipmentKind, Appliance> { [CookingPlace.Of(way).Kind!] = new(count, 2, 15) },
                Equipment = [],
            };
            Assert.Equal(4, profile.Teams);
            var lesson = Lesson(Cooked(Fritters, way), Cooked(WithoutEgg, way));

            Assert.Equal(eachForItself, Assert.Single(BenchClasses.Of(lesson, profile).CookedFirst).EachForItself);
        }
    }

    /// <summary>What a demonstration puts into the fat is in it for what is fried after it.</summary>
    [Theory]
    [InlineData("Whole egg", 1)]
    [InlineData("Whole milk", 0)]
    [InlineData("Fine salt", 0)]
    public void What_lacks_something_that_is_shown_in_the_fat_is_to_be_fried_before(string ingredient, int orders)
    {
        var shown = Shown("A drop", "All-purpose flour") with { Uses = [new(EquipmentKind.Fryer, 1)] };
        shown = shown with
        {
            Ingredients = [.. shown.Ingredients, .. Shown("", "Whole milk").Ingredients, .. Shown("", ingredient).Ingredients],
        };
        var sure = Renamed(WithoutEgg, "sure", Sure);
        shown = shown with { Ingredients = [.. shown.Ingredients.Select(line => line with { Ingredient = Sure(line.Ingredient) })] };

        var bench = BenchClasses.Of(Lesson(sure) with { Demonstrations = [shown] }, Profile(""));

        Assert.Equal(orders, bench.ShownBehind.Count(order => order is { Bread: 0, Demonstration: 0, Way: CookingWay.Fryer }));
        Assert.All(bench.ShownBehind, order => Assert.True(order.MayBe(bench)));
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

    /// <summary>Of two that are declared to hold the same, what labels may add counts: shortening may hold milk, oil may hold peanut.</summary>
    [Fact]
    public void What_may_hold_less_goes_before_what_is_declared_to_hold_the_same_and_may_hold_more()
    {
        var sure = Renamed(WithoutEgg, "sure", line => Sure(line));
        var perhaps = Renamed(sure, "perhaps", line => line.Role == IngredientRole.Liquid ? line with { Doubts = [Doubt("egg")] } : line);

        Assert.Equal([(1, 0)], Orders(perhaps, sure));
        Assert.Empty(Orders(sure, Renamed(sure, "the same", line => line)));
    }

    /// <summary>What is declared counts first: a bread that may hold gluten still goes before one that holds it.</summary>
    [Fact]
    public void What_is_in_doubt_counts_after_what_is_declared()
    {
        var perhaps = Renamed(WithoutEgg, "rice", line =>
            line.Role == IngredientRole.Flour ? Sure(Found("Rice flour")) with { Doubts = [Doubt("wheat")] } : Sure(line)
        );
        Assert.DoesNotContain(perhaps.Allergens, AllergenWords.Find("gluten")!.Means.Contains);

        Assert.Equal([(1, 0)], Orders(WithoutEgg, perhaps));
        Assert.Equal([(1, 0)], Orders(perhaps, Renamed(perhaps, "sure", line => line with { Doubts = [] })));
    }

    [Fact]
    public void What_may_hold_it_may_carry_it_over()
    {
        var perhaps = Renamed(WithoutEgg, "perhaps", line =>
            line.Role == IngredientRole.Liquid ? line with { Doubts = [Doubt("egg")] } : line
        );
        var sure = Renamed(WithoutEgg, "sure", Sure);
        var plain = Of(sure, perhaps);

        var shared = Assert.Single(plain.Shares);
        Assert.Empty(shared.With);
        Assert.Equal("perhaps", Assert.Single(shared.InDoubt).Formula.Title);
        Assert.Contains("Its fat is that of perhaps, and may carry it over", AllergyText.Of(plain), StringComparison.Ordinal);

        var both = Assert.Single(ComputedPack.Build(Lesson(Fritters, sure, perhaps), Profile("egg")).Value.Concerns).Breads[1];
        Assert.Contains("Its fat is that of spoon fritters, and carries it over", AllergyText.Of(both), StringComparison.Ordinal);
        Assert.Contains("That of perhaps, too, may carry it over", AllergyText.Of(both), StringComparison.Ordinal);
    }

    /// <summary>A drop of batter that is shown in the fryer is in the fat for all who fry after it.</summary>
    [Theory]
    [InlineData("Whole egg", "fryer", "Its fat is that of the demonstration “A drop”, and carries it over")]
    [InlineData("Instant yeast", "fryer", "Its fat is that of the demonstration “A drop”, and may carry it over")]
    [InlineData("Whole egg", "burner", "")]
    public void What_is_shown_in_the_fat_carries_over_as_a_bread_does(string ingredient, string occupies, string says)
    {
        var shown = Shown("A drop", ingredient) with { Uses = [new(EquipmentKind.Find(occupies)!, 1)] };
        var lesson = Lesson(Renamed(WithoutEgg, "sure", Sure)) with { Demonstrations = [shown] };

        var text = AllergyText.Of(Assert.Single(Assert.Single(ComputedPack.Build(lesson, Profile("egg")).Value.Concerns).Breads));

        if (says.Length > 0)
            Assert.Contains(says, text, StringComparison.Ordinal);
        else
            Assert.DoesNotContain("A drop", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_demonstration_weighs_out_is_held_against_the_class_and_declared()
    {
        var lesson = Lesson(WithoutEgg) with { Demonstrations = [Shown("A foam", "Egg white"), Shown("Salted", "Fine salt")] };
        var pack = ComputedPack.Build(lesson, Profile("egg")).Value;

        var concern = Assert.Single(Assert.Single(pack.Concerns).Shown);
        Assert.Equal("A foam", concern.Shown.Name);
        Assert.StartsWith(
            "Declared in egg white (egg): not to be handled, tasted or passed",
            AllergyText.Of(concern),
            StringComparison.Ordinal
        );
        Assert.Contains(pack.Allergens, allergen => allergen.Name == "egg");
        Assert.DoesNotContain(pack.Lesson.BreadAllergens, allergen => allergen.Name == "egg");
        foreach (
            var caution in new[] { StandingCautions.For(pack.Lesson), StandingCautions.For(lesson.Demonstrations[0]) }.Select(cautions =>
                cautions.Single(caution => caution.Of == Hazard.Allergens)
            )
        )
            Assert.Contains("eclared: egg.", caution.Text.Written, StringComparison.Ordinal);
    }

    /// <summary>A control is its bread without what leavens it: it holds what its bread holds.</summary>
    [Fact]
    public void A_control_is_held_against_the_class_as_it_is_mixed()
    {
        var lesson = LessonReader.Read(Repository.PathOf("lessons", "one-tin-three-lifts")).Model!;
        var pack = ComputedPack.Build(lesson, Profile("egg")).Value;

        var concern = Assert.Single(Assert.Single(pack.Concerns).Shown);
        Assert.Equal("A dozen strokes, and a control", concern.Shown.Name);
        Assert.Equal("Whole egg", Assert.Single(concern.Declared).Ingredient.Name);
    }

    private static LessonDemonstration Shown(string name, string ingredient) =>
        new(name, 2, "", "", "As it says.") { Ingredients = [new(Found(ingredient), Mass.FromGrams(20))] };

    private static AllergenDoubt Doubt(string need) => new(AllergenWords.Find(need)!.Means, "invented for this test", "no source");

    private static Ingredient Sure(Ingredient ingredient) => ingredient with { Doubts = [] };

    private static IEnumerable<(int, int)> Orders(params LessonFormula[] breads) =>
        BenchClasses.Of(Lesson(breads), Profile("egg")).CookedFirst.Select(order => (order.Bread, order.Before));

    private static Ingredient Found(string name) => IngredientCatalog.All.First(ingredient => ingredient.Name == name);

    private static LessonFormula Renamed(LessonFormula bread, string id, Func<Ingredient, Ingredient> change) =>
        bread with
        {
            Surfaces = [.. bread.Surfaces.Select(surface => surface with { Ingredient = Sure(surface.Ingredient) })],
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
