using ClassKit.Baking.Cooking;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Content.Tests.Lessons;

/// <summary>Where a bread is cooked, read from the brackets of its steps as the handbook writes them.</summary>
public sealed class CookingWaysTests : IDisposable
{
    private const string Dry = "(13–17 min, oven 175 °C, no wait)";

    private readonly ContentFolder _folder = new();

    /// <summary>The shipped popovers with the fat that a fryer takes, and no oven until one is written in.</summary>
    private readonly string _bread = File.ReadAllText(Path.Combine(Repository.Lesson, "formulas/popovers.md"))
        .ReplaceLineEndings("\n")
        .Replace("(5–8 min, unattended, oven ready)", "(5–8 min)", StringComparison.Ordinal)
        .Replace("(20 min, oven 220 °C, door shut)", "(20 min)", StringComparison.Ordinal)
        .Replace("cup top: 70 mm\ncup bottom: 51 mm\ncup depth: 35 mm\n", "", StringComparison.Ordinal);

    public void Dispose() => _folder.Dispose();

    private Reading<LessonFormula> With(string conditions) =>
        LessonFormulaReader.Read(_folder.Write("popovers.md", Complaint.Break(_bread, Dry, $"(13–17 min, {conditions})")));

    /// <summary>Whose hands are in it, and what it takes: common practice, no source.</summary>
    [Theory]
    [InlineData("oven 175 °C", CookingWay.Oven, 175.0, 0, "")]
    [InlineData("pizza oven 400 °C", CookingWay.PizzaOven, 400.0, 1, "1 pizza oven")]
    [InlineData("combi oven 190 °C", CookingWay.CombiOven, 190.0, 0, "1 combi oven")]
    [InlineData("steamer", CookingWay.Steamer, null, 0, "1 steamer")]
    [InlineData("steamer, 2 steamer places", CookingWay.Steamer, null, 0, "2 steamers")]
    [InlineData("griddle 450 °F", CookingWay.Griddle, 232.2, 1, "1 griddle")]
    [InlineData("pan 230 °C, 2 people", CookingWay.Pan, 230.0, 2, "1 burner")]
    [InlineData("fryer 180 °C", CookingWay.Fryer, 180.0, 1, "1 fryer")]
    [InlineData("flame", CookingWay.Flame, null, 1, "1 burner")]
    [InlineData("boiling water", CookingWay.BoilingWater, null, 1, "1 burner")]
    [InlineData("microwave", CookingWay.Microwave, null, 0, "1 microwave")]
    public void Every_way_is_read(string conditions, CookingWay way, double? celsius, int people, string takes)
    {
        var reading = With(conditions);
        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        var step = reading.Model!.Cooking.Single();

        Assert.Equal((way, people), (step.Way, step.Work.People));
        Assert.Equal(takes, string.Join(", ", step.Work.Uses));
        Assert.Equal(celsius is null, step.Temperature is null);
        if (celsius is { } heat)
            Assert.Equal(heat, step.Temperature!.Value.Celsius, 0.1);
    }

    [Theory]
    [InlineData("fryer 180 °C, unattended", "The brackets say `unattended` of a fryer", "Somebody stands by all the time")]
    [InlineData("pan 230 °C, flame", "The brackets hold `flame` as well", "A step is cooked in one thing")]
    [InlineData("steamer 100 °C", "The brackets hold `steamer 100 °C`", "Write `steamer` alone")]
    [InlineData("fryer 1800 °C", "The temperature is 1800 °C", "from -40 to 600")]
    [InlineData("pan 230 °C, each 3–2 min", "One piece takes `each 3–2 min`", "Write the shorter time first")]
    [InlineData("pan 230 °C, each 20 min", "One piece takes `each 20 min`", "no more than the 17 of the step")]
    [InlineData("2 steamer places", "The brackets name places of a steamer", "`steamer, 2 steamer places`")]
    [InlineData(
        "oven 190 °C, 2 steamer places",
        "The brackets name places of one thing, `steamer`, and cook in another, `oven`",
        "`oven, 2 oven places`"
    )]
    [InlineData("flame, each 20–30 s", "The brackets hold `each 20–30 s`", "whole minutes")]
    [InlineData("pan 230 °C, each 1–1.5 min", "The brackets hold `each 1–1.5 min`", "whole minutes")]
    [InlineData("reheats", "The brackets say `reheats` and nothing heats", "combi oven 160 °C, reheats")]
    [InlineData("staemer", "The brackets hold `staemer`, which is not known here", "steamer")]
    public void What_cannot_be_is_said(string conditions, string found, string remedy) =>
        Complaint.Only(With(conditions), Complaint.LineOf(_bread, Dry), found, remedy);

    [Theory]
    [InlineData("steamer, 2 steamer places", 1, false)]
    [InlineData("oven 190 °C, 2 oven places", 2, true)]
    [InlineData("oven 190 °C", 1, false)]
    public void Only_places_in_an_oven_are_the_ovens(string conditions, int places, bool areStated)
    {
        var work = With(conditions).Model!.Cooking.Single().Work;

        Assert.Equal((places, areStated), (work.OvenPlaces, work.StatesOvenPlaces));
    }

    [Theory]
    [InlineData("each 2 min, pan 230 °C", 2, 2)]
    [InlineData("pan 230 °C, each 2–3 min", 2, 3)]
    public void Pieces_that_go_through_one_after_another_have_a_time_of_their_own(string conditions, int least, int most) =>
        Assert.Equal(new PieceTime(least, most), With(conditions).Model!.Cooking.Single().Each);

    /// <summary>A paste is cooked over something: two teams cannot do it on one burner.</summary>
    [Fact]
    public void A_paste_that_is_cooked_takes_a_burner()
    {
        Assert.Contains(With("oven 175 °C, cooks fine salt").Problems, problem =>
            problem.Found.Contains("cooks a paste, and its brackets occupy no burner", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(With("oven 175 °C, burner, cooks fine salt").Problems, problem =>
            problem.Found.Contains("burner", StringComparison.Ordinal)
        );
    }

    /// <summary>Boiling water comes out of something, and is a liquid.</summary>
    [Fact]
    public void What_is_poured_boiling_takes_a_kettle_or_a_burner()
    {
        Assert.Contains(With("oven 175 °C, boils whole milk").Problems, problem =>
            problem.Found.Contains("boils something, and its brackets occupy neither kettle nor burner", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(With("oven 175 °C, kettle, boils whole milk").Problems, problem =>
            problem.Found.Contains("kettle", StringComparison.Ordinal)
        );
        Assert.Contains(With("oven 175 °C, kettle, boils fine salt").Problems, problem =>
            problem.Found.Contains("boil fine salt, which is no liquid", StringComparison.Ordinal)
        );
    }

    /// <summary>A bread that is baked, frozen and heated again: each occupies its own, and the heat of the bake stays the oven's.</summary>
    [Theory]
    [InlineData("freezer", "combi oven 160 °C", "1 combi oven")]
    [InlineData("blast freezer", "steamer", "1 steamer")]
    [InlineData("freezer", "microwave", "1 microwave")]
    [InlineData("freezer", "oven 160 °C", "")]
    public void Freezing_and_reheating_are_read(string freezer, string heat, string takes)
    {
        var reading = With(
            $"oven 175 °C). Until dry.\n9. **Freeze** (60 min, {freezer}, -18 °C, unattended). Wrapped.\n10. **Reheat** (5–8 min, {heat}, reheats"
        );
        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        var bread = reading.Model!;
        var (frozen, heated) = (bread.Steps.Single(step => step.Name == "Freeze"), bread.Steps.Single(step => step.Name == "Reheat"));

        Assert.Equal(
            (true, -18, "1 " + freezer),
            (frozen.IsFreezing, frozen.Temperature!.Value.Celsius, string.Join(", ", frozen.Work.Uses))
        );
        Assert.Equal((true, false, takes), (heated.IsCooking, heated.IsBaking, string.Join(", ", heated.Work.Uses)));
        Assert.Equal((175, 175, true, false), (bread.BakeFrom.Celsius, bread.BakeTo.Celsius, bread.IsOvenBread, bread.IsFrozenDough));
        Assert.Equal(
            [Hazard.Freezing, Hazard.Reheating],
            StandingCautions.In(bread).Where(hazard => hazard is Hazard.Freezing or Hazard.Reheating)
        );
        Assert.Contains(
            "74 °C (165 °F)",
            StandingCautions.For(bread).Single(caution => caution.Title == "Reheating").Text.ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_is_heated_again_in_the_oven_says_so() =>
        Assert.Contains(
            With("oven 175 °C). Until dry.\n9. **Cool** (20 min, unattended). On a rack.\n10. **Reheat** (5–8 min, oven 160 °C").Doubts,
            problem => problem.Found.Contains("`Reheat` is in the oven again, and does not say `reheats`", StringComparison.Ordinal)
        );

    [Fact]
    public void A_word_without_its_heat_only_occupies() =>
        Complaint.Only(With("griddle"), Complaint.LineOf(_bread, "## Method"), "what else the bread is cooked in", "`griddle 230 °C`");

    [Fact]
    public void Frying_takes_fat()
    {
        var dry = Complaint
            .Break(_bread, Dry, "(3–4 min, fryer 180 °C)")
            .Replace("| Vegetable oil (canola) | 1 g a piece |", "| Cornmeal | 1 g a piece |", StringComparison.Ordinal);
        var problem = LessonFormulaReader
            .Read(_folder.Write("popovers.md", dry))
            .Problems.Single(problem => problem.Found.Contains("fried", StringComparison.Ordinal));

        Complaint.One(problem, Complaint.LineOf(dry, "## Method"), "no fat is listed for the fryer", "1500 g a fryer");
    }

    /// <summary>Each that cooks is a row of the handbook.</summary>
    [Fact]
    public void The_handbook_names_every_way()
    {
        var handbook = File.ReadAllText(Path.Combine(Repository.Root, "lessons", "README.md"));

        Assert.All(CookingPlace.All, place => Assert.Matches($@"\n\| `{place.Name}{(place.HasHeat ? " [0-9]+ °C" : "")}` \|", handbook));
    }
}
