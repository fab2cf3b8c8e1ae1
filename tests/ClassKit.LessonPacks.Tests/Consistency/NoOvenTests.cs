using ClassKit.Baking.Cooking;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Packs;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>A pack whose breads leave the oven out speaks of what they are cooked in, and gives no number where nobody has one.</summary>
public sealed class NoOvenTests
{
    private static readonly string[] ForTheClass = ["formula-cards.html", "observations.html", "bench-plan.html", "run-sheets.html"];

    /// <summary>No bread of it bakes, so that no page for the class speaks of an oven but for the gloves.</summary>
    [Fact]
    public void No_page_sends_anybody_to_an_oven() =>
        Assert.All(ForTheClass, file =>
            Assert.DoesNotMatch(
                @"(?i)\boven\b(?! (gloves?|in the house))",
                BuiltPack.NoOven[file].Body!.Words().Replace("No Oven in the House", "", StringComparison.Ordinal)
            )
        );

    [Fact]
    public void Each_card_says_what_it_is_cooked_in_and_minds_it()
    {
        var cards = BuiltPack
            .NoOven["formula-cards.html"]
            .QuerySelectorAll(".card")
            .ToDictionary(card => card.QuerySelector("h2")!.Words(), card => card.Words());

        Assert.Contains("Steamer: at the boiling point", cards["Steamed milk buns"], StringComparison.Ordinal);
        Assert.Contains("Pan: 245", cards["Pan rounds"], StringComparison.Ordinal);
        Assert.Contains("Fryer: 180", cards["Spoon fritters"], StringComparison.Ordinal);
        Assert.Contains("Lift the far side first", cards["Steamed milk buns"], StringComparison.Ordinal);
        Assert.Contains("never water", cards["Spoon fritters"], StringComparison.Ordinal);
        Assert.Contains("extinguisher for burning fat", cards["Spoon fritters"], StringComparison.Ordinal);
        Assert.DoesNotContain("Thin film", cards["Spoon fritters"], StringComparison.Ordinal);
        Assert.Contains("Hot plate or pan.", cards["Pan rounds"], StringComparison.Ordinal);
        Assert.All(cards.Values, card => Assert.Contains("running water for 20 minutes", card, StringComparison.Ordinal));
    }

    /// <summary>Common practice, no source: a bun of 60 g weighs 55 g to 65 g out of the steamer; a round puffs as it will.</summary>
    [Fact]
    public void What_is_expected_is_a_number_or_said_to_be_none()
    {
        var page = BuiltPack.NoOven["observations.html"];

        Assert.Equal("cannot be predicted", page.Expected("Pan rounds")["Height"][0]);
        Assert.Matches("^5[5-9]–6[0-5] g$", page.Expected("Steamed milk buns")["Mass after"][0]);
        Assert.StartsWith("−", page.Expected("Spoon fritters")["Loss in cooking"][0], StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", BuiltPack.NoOven["comparison.html"].Body!.Words(), StringComparison.Ordinal);
    }

    /// <summary>
    /// A round lies in the pan for two minutes of the ten that the team's rounds take; a bun steams with all the others. Common practice,
    /// no source.
    /// </summary>
    [Fact]
    public void What_happens_in_a_piece_happens_in_its_own_time()
    {
        var minutes = BuiltPack
            .NoOven["comparison.html"]
            .QuerySelectorAll("tr")
            .Single(row => row.Children[0].Words() == "In the heat")
            .QuerySelectorAll("td")
            .Select(cell => cell.Words().Replace(' ', ' '))
            .ToList();

        Assert.Contains("2 min", minutes);
        Assert.Contains("11–13 min", minutes);
        Assert.DoesNotContain("9–12 min", minutes);
    }

    /// <summary>
    /// Four teams, two steamers of two places: all four can steam at once, and each has its fryer. The instructor is told when to switch
    /// them on.
    /// </summary>
    [Fact]
    public void The_run_sheet_switches_on_what_has_to_be_hot()
    {
        var instructor = BuiltPack.NoOven["run-sheets.html"].Body!.Words();

        Assert.Contains("Switch the steamers on", instructor, StringComparison.Ordinal);
        Assert.Contains("Switch the fryers off", instructor, StringComparison.Ordinal);
    }

    /// <summary>What is shown at a fryer is shown at deep fat: nothing of a greased pan is said there.</summary>
    [Fact]
    public void Deep_fat_is_never_called_a_thin_film() =>
        Assert.DoesNotContain("Thin film", BuiltPack.NoOven["guide.html"].Body!.Words(), StringComparison.Ordinal);

    /// <summary>Four teams with 1.5 kg each.</summary>
    [Fact]
    public void The_fat_of_the_fryers_is_ordered() =>
        Assert.Matches(
            @"Vegetable oil \(canola\)[^|]{0,40}6\.0\d\d kg",
            BuiltPack.NoOven["requisition.html"].Body!.Words().Replace(' ', ' ')
        );

    /// <summary>
    /// Steam keeps a skin wet, whatever raised the dough; a dough that stands longer is no fuller on the bench than one that does not.
    /// Common practice, no source.
    /// </summary>
    [Fact]
    public void What_is_steamed_gets_no_crust_and_is_as_full_as_any_that_is_steamed()
    {
        var lesson = LessonReader.Read(Repository.PathOf("lessons", "no-oven-in-the-house")).Model!;
        var (buns, fritters) = (lesson.Formulas[0], lesson.Formulas[2]);
        var late = buns with
        {
            Formula = buns.Formula with { Id = "late" },
            Place = new(buns.Formula.Id, "late", buns.Why, [], [1]) { IsPastItsTime = true },
        };
        var powder = fritters with
        {
            Steps = [.. fritters.Steps.Select(step => step.IsCooking ? step with { Way = CookingWay.Steamer, Temperature = null } : step)],
        };
        var compared = ComputedPack
            .Build(
                lesson with
                {
                    Formulas = [buns, late, powder],
                },
                ClassProfileReader.Read(Repository.PathOf("demo-cohort", "no-oven-class.md")).Model!
            )
            .Value.Comparison;

        Assert.Equal(compared[0].PerPiece.Held.Holding.BenchLimit, compared[1].PerPiece.Held.Holding.BenchLimit);
        Assert.False(compared[1].IsRisePredicted);
        Assert.All(compared, bread => Assert.NotEqual(true, bread.PerPiece.Held.Holding.DriesAtItsSkin));
    }
}
