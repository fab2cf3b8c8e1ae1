using ClassKit.Baking.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Tests.Lessons;

public sealed class LessonFormulaReaderTests : IDisposable
{
    private const string Popovers = "formulas/popovers.md";

    private readonly ContentFolder _folder = new();
    private readonly string _shipped = File.ReadAllText(Path.Combine(Repository.Lesson, Popovers)).ReplaceLineEndings("\n");

    public void Dispose() => _folder.Dispose();

    private Reading<LessonFormula> Read(string text) => LessonFormulaReader.Read(_folder.Write("popovers.md", text));

    [Fact]
    public void A_formula_is_read_in_full()
    {
        var formula = Read(_shipped).Model;

        Assert.NotNull(formula);
        Assert.Equal("popovers", formula.Formula.Id);
        Assert.Equal("Popovers", formula.Formula.Title);
        Assert.Equal(Leavening.Steam, formula.Formula.Leavening);
        Assert.Equal(
            ["ap_flour", "whole_milk", "whole_egg", "unsalted_butter", "salt"],
            formula.Formula.Lines.Select(line => line.Ingredient.Id)
        );
        Assert.Equal([100.0, 200, 120, 12, 2], formula.Formula.Lines.Select(line => line.Percent));
        Assert.Equal("popover", formula.Piece);
        Assert.Equal(60, formula.PieceMass.Grams);
        Assert.Equal(["egg", "milk", "wheat"], formula.Allergens.Select(allergen => allergen.Name));
        Assert.Equal(220, formula.BakeFrom.Celsius);
        Assert.Equal(175, formula.BakeTo.Celsius);
        Assert.All(formula.Cautions, caution => Assert.NotEmpty(caution.Source));
        Assert.StartsWith("Water from milk and egg", formula.Traits.GasSource.Written, StringComparison.Ordinal);
        var bake = formula.Steps.Single(step => step.Name == "Bake to dry");
        Assert.Equal((13, 17, true), (bake.MinMinutes, bake.MaxMinutes, bake.InOven));
        Assert.StartsWith("Turn the oven down", bake.Text.Written, StringComparison.Ordinal);
    }

    [Fact]
    public void An_ingredient_may_be_named_by_its_id() =>
        Assert.True(Read(Complaint.Break(_shipped, "| All-purpose flour", "| ap_flour")).Succeeded);

    [Theory]
    [InlineData("leavening: steam", "leavening: steem", "", "`leavening` is `steem`", "Did you mean `steam`?")]
    [InlineData("piece mass: 60 g", "piece mass: 60", "", "`60`, without a unit", "`60 g`")]
    [InlineData("piece mass: 60 g", "piece mass: 60 grammes", "", "the unit `grammes`", "g, kg, oz, lb")]
    [InlineData("piece mass: 60 g", "piece mass: sixty g", "", "`piece mass` is `sixty g`", "a number and its unit")]
    [InlineData("piece mass: 60 g", "piece mass: 60,5 g", "", "`60,5 g`", "Write a decimal point: 60.5")]
    [InlineData("piece mass: 60 g", "piece mass: 0 g", "", "`piece mass` is 0 g", "above 0")]
    [InlineData("loss: 4 %", "loss: 100 %", "", "`loss` is 100 %", "from 0 to less than 100")]
    [InlineData("mix temperature: 24 °C", "mix temperature: 2400 °C", "", "`mix temperature` is 2400 °C", "from -40 to 600")]
    [InlineData("mix temperature: 24 °C", "mix temperature: 24 K", "", "the unit `K`", "°C, C, °F, F")]
    [InlineData("mix temperature: 24 °C", "mix temperature: [24 °C]", "", "`mix temperature` is a list", "Write one value")]
    [InlineData("| All-purpose flour | 100 |\n", "", "## Formula", "The formula has no flour", "100 % all together")]
    [InlineData(
        "| All-purpose flour | 100 |",
        "| All-purpose flour | 90 |",
        "## Formula",
        "The flour adds up to 90 %",
        "All flour together is 100 %"
    )]
    [InlineData(
        "| All-purpose flour | 100 |",
        "| All-purpose flour | 85 |\n| Almond flour | 15 |",
        "## Formula",
        "The flour adds up to 85 %",
        "Not counted as flour: Almond flour (15 %)"
    )]
    [InlineData("| Whole milk", "| Whole mlik", "", "`Whole mlik` is not an ingredient", "Did you mean `Whole milk`?")]
    [InlineData("| Whole milk", "| Dragon fruit", "", "`Dragon fruit` is not an ingredient", "Add it as a row of your own")]
    [InlineData("| Whole milk | 200 |", "| Whole milk | lots |", "", "The percentage is `lots`", "Write digits")]
    [InlineData("| Whole milk | 200 |", "| Whole milk | 0 |", "", "The percentage is 0", "above 0")]
    [InlineData("| Whole milk | 200 |", "| Whole milk | |", "", "The cell in the column `%` is empty", "Fill it in")]
    [InlineData("| Whole milk | 200 |", "| Whole milk | 200 | 3 |", "", "The cell `3` has no column", "as many cells")]
    [InlineData(
        "2. **Warm** (3–5 min, burner, warms whole milk, warms unsalted butter). Melt",
        "2. Melt",
        "",
        "This step reads `Melt the butter",
        "1. **Bake** (18–20 min, oven 190 °C)"
    )]
    [InlineData("(3–5 min, burner,", "(5–3 min, burner,", "", "The duration is `5–3 min`", "shorter time first")]
    [InlineData("(3–5 min, burner, warms whole milk, warms unsalted butter)", "(a while)", "", "The duration is `a while`", "`5–8 min`")]
    [InlineData("oven 175 °C", "oven hot", "", "The temperature is `hot`", "a number and its unit")]
    [InlineData("- **Hot tin and fat**", "- Hot tin and fat", "", "This item reads `Hot tin and fat", "a name in bold")]
    [InlineData(
        " *Source: heat of vaporisation of water at 100 °C (212 °F), IAPWS steam tables.*",
        "",
        "",
        "The caution `Steam when piercing` names no source",
        "*Source:"
    )]
    [InlineData("- **Onset.**", "- **Onest.**", "", "`Onest` is not a trait", "Did you mean `Onset`?", 2)]
    [InlineData("- **Limit.** The heat", "- **Onset.** The heat", "", "`Onset` is here a second time", "Put both together", 2)]
    [InlineData("## Notes", "## Note", "", "`## Note` is not a section", "Did you mean `Notes`?")]
    [InlineData("## Equipment", "## Method", "", "The section `Method` is here a second time; the first is in line", "another heading", 2)]
    [InlineData("burner", "burnner", "", "`burnner`, which is not known here", "Did you mean `burner`?")]
    [InlineData("burner", "2 burnerss", "", "`2 burnerss`, which is not known here", "Did you mean `burners`?")]
    [InlineData("burner", "0 burners", "", "The brackets hold `0 burners`", "Leave out what the step does not take")]
    [InlineData("unattended, keeps", "unatended, keeps", "", "`unatended`, which is not known here", "Did you mean `unattended`?")]
    [InlineData("unattended, keeps", "unattended, 2 people, keeps", "", "`2 people` as well", "Say once how many people")]
    [InlineData(
        "keeps overnight, wait up to 20 min",
        "keeps overnight, wait 20–5 min",
        "",
        "The wait is `wait 20–5 min`",
        "shorter time first"
    )]
    [InlineData("oven 175 °C", "oven 175 °C, 80 °C", "", "a second temperature, `80 °C`", "A step has one")]
    [InlineData("(1–2 min). Pierce each", "(1–2 min, oven ready). Pierce each", "", "`Pierce` needs the oven ready", "before the bake")]
    [InlineData(
        "goes in at {liquid_temperature}",
        "goes in at {oven_temperature}",
        "",
        "`{oven_temperature}` stands for no computed value",
        "Did you mean `mix_temperature`?"
    )]
    [InlineData(
        "goes in at {liquid_temperature}",
        "weighs {whole_mlik}",
        "",
        "`{whole_mlik}` stands for no computed value",
        "Did you mean `whole_milk`?"
    )]
    [InlineData(
        "- Tray to carry the tin",
        "- Tray for {pieces}",
        "",
        "`{pieces}` stands where no value is put in",
        "Name values in sentences only"
    )]
    [InlineData("warms whole milk", "warms hole milk", "", "`hole milk` is not an ingredient", "Did you mean `Whole milk`?")]
    [InlineData(
        "warms unsalted butter",
        "warms honey",
        "## Method",
        "warm, melt, temper, cook or boil honey, which is not in the formula",
        "Name an ingredient of the formula",
        2
    )]
    [InlineData(
        "warms unsalted butter",
        "tempers whole milk",
        "## Method",
        "warm, melt, temper, cook or boil whole milk more than once",
        "Say it once"
    )]
    [InlineData("warms unsalted butter", "melts whole egg", "## Method", "melt whole egg, which is no fat", "Write `warms`")]
    [InlineData("mix temperature: 24 °C\n", "", "## Method", "nothing says how warm the mix should be", "Add `mix temperature: 24 °C`")]
    [InlineData(
        "mix temperature: 24 °C",
        "mix temperature: 45 °C",
        "",
        "its method cannot give the mix temperature: 45 °C (113 °F) is asked",
        "within reach"
    )]
    [InlineData(
        "warms whole milk, warms unsalted butter",
        "2 people",
        "mix temperature",
        "its method cannot give the mix temperature: 24 °C (75 °F) is asked",
        "`warms whole milk`",
        2
    )]
    [InlineData("cup top: 70 mm\n", "", "cup bottom", "Of the cup only `cup bottom` and `cup depth` is known", "Write all three")]
    [InlineData("cup top: 70 mm", "cup top: 70", "", "`cup top` is `70`, without a unit", "`70 mm`")]
    [InlineData("- Tray to carry the tin", "- 0 × Tray", "", "`Tray` is needed 0 times", "Leave it out")]
    [InlineData("- Tray to carry the tin", "- Whisk", "- Whisk (shared)", "`Whisk` is listed a second time", "Put both into one")]
    [InlineData("| Height |", "| Hight |", "", "`Hight` is not measured here", "Did you mean `Height`?")]
    [InlineData(
        "| Height |",
        "| Diameter |",
        "| Diameter | Did they climb",
        "`Diameter` is measured a second time",
        "Put both rows into one"
    )]
    [InlineData("1 g a piece", "1 g", "", "The amount is `1 g`", "`5 g a tin`")]
    [InlineData("1 g a piece", "a little a piece", "", "The amount is `a little`", "a number and its unit")]
    [InlineData("1 g a piece", "1 g a cup", "", "The amount is `1 g a cup`", "`1 g a piece`")]
    [InlineData(
        "| Vegetable oil (canola) | 1 g",
        "| Vegetable oyl | 1 g",
        "",
        "`Vegetable oyl` is not an ingredient",
        "Did you mean `vegetable oil`?"
    )]
    [InlineData(
        "## Greasing and dusting",
        "## Greasing & dusting",
        "",
        "`## Greasing & dusting` is not a section",
        "Did you mean `Greasing and dusting`?"
    )]
    [InlineData(
        "thinly with neutral oil",
        "thinly with sesame oil",
        "",
        "`sesame oil` is done here, and nothing is listed for it under `## Greasing and dusting`",
        "| Amount | For |"
    )]
    [InlineData(
        "Whisk egg and salt",
        "Whisk egg, sugar and salt",
        "",
        "`sugar` is named here and stands in no list",
        "neither ordered nor declared"
    )]
    [InlineData(
        "loss: 4 %",
        "loss: 4 %\ncut after: 20 min",
        "cut after",
        "`cut after` is 20 min, which a class goes on for",
        "into the step that cools it"
    )]
    [InlineData("loss: 4 %", "loss: 4 %\nbest within: soon", "best within", "`best within` is `soon`", "a number and its unit")]
    [InlineData("loss: 4 %", "loss: 4 %\nteam makes: two", "team makes", "`team makes` is `two`", "Write digits")]
    public void A_mistake_is_named_with_its_line_and_the_way_out(
        string find,
        string replacement,
        string? at,
        string found,
        string remedy,
        int problems = 1
    )
    {
        var broken = Complaint.Break(_shipped, find, replacement);

        Complaint.Among(Read(broken), problems, Complaint.LineFor(at, _shipped, find, broken), found, remedy);
    }

    [Fact]
    public void A_bread_may_say_how_many_of_it_a_team_makes()
    {
        Assert.Equal(2, Read(Complaint.Break(_shipped, "loss: 4 %", "loss: 4 %\nteam makes: 2")).Model!.TeamMakes);
        Assert.Null(Read(_shipped).Model!.TeamMakes);
    }

    [Fact]
    public void What_greases_a_tin_is_read_and_counts_for_each_piece()
    {
        var popovers = Read(_shipped).Model!;
        var surface = Assert.Single(popovers.Surfaces);

        Assert.Equal(("vegetable_oil", 1.0, SurfaceShare.Piece), (surface.Ingredient.Id, surface.Amount.Grams, surface.Each));
        Assert.Equal(6, surface.ForTeam(popovers, 6).Grams);
    }

    [Fact]
    public void An_amount_for_a_tin_counts_the_tins_of_the_equipment_and_no_tray_to_carry_them()
    {
        var tins = Read(
            _shipped
                .Replace("1 g a piece", "3 g a tin", StringComparison.Ordinal)
                .Replace("- Muffin tin with", "- 2 × Muffin tin with", StringComparison.Ordinal)
        ).Model!;
        Assert.Equal(6, tins.Surfaces[0].ForTeam(tins, 6).Grams);

        var bare = Complaint.Break(
            _shipped.Replace("1 g a piece", "3 g a tin", StringComparison.Ordinal),
            "- Muffin tin with standard cups",
            "- Twelve paper cups"
        );
        Complaint.Only(Read(bare), Complaint.LineOf(bare, "3 g a tin"), "the equipment has none", "baking trays");
    }

    [Fact]
    public void Without_the_section_the_greasing_of_the_method_is_missed()
    {
        var at = _shipped.IndexOf("## Greasing", StringComparison.Ordinal);
        var bare = _shipped.Remove(at, _shipped.IndexOf("## Method", StringComparison.Ordinal) - at);
        Complaint.Only(
            Read(bare),
            Complaint.LineOf(bare, "neutral oil"),
            "`neutral oil` is done here, and nothing is listed for it under `## Greasing and dusting`",
            "| Amount | For |"
        );
    }

    [Fact]
    public void What_a_step_takes_at_the_bench_is_read()
    {
        var steps = Read(
            Complaint.Break(_shipped, "(1–2 min). Pierce", "(1–2 min, 3 people, 2 griddles, mixer, 2 oven places, no wait). Pierce")
        ).Model!.Steps;
        StepWork Work(string name) => steps.Single(step => step.Name == name).Work;

        Assert.Equal(["1 burner"], Work("Warm").Uses.Select(use => use.ToString()));
        Assert.Equal((1, StepWork.Usual.Wait), (Work("Mix").People, Work("Mix").Wait));
        Assert.Equal(
            (0, 0, 20, true),
            (Work("Rest").People, Work("Rest").Wait.MinMinutes, Work("Rest").Wait.MaxMinutes, Work("Rest").KeepsOvernight)
        );
        Assert.Equal((0, true), (Work("Heat the tin").People, Work("Heat the tin").OvenReady));
        Assert.Equal(2, Work("Fill").People);
        Assert.Equal((0, true), (Work("Bake hot").People, Work("Bake hot").DoorShut));
        Assert.Equal((3, 2, 0), (Work("Pierce").People, Work("Pierce").OvenPlaces, Work("Pierce").Wait.MaxMinutes));
        Assert.Equal(["2 griddles", "1 mixer"], Work("Pierce").Uses.Select(use => use.ToString()));
    }

    /// <summary>Every step that takes a scale says so, or two teams are planned to weigh on one.</summary>
    [Fact]
    public void A_method_that_weighs_without_a_scale_says_so()
    {
        var unweighed = _shipped
            .Replace(", scale, small scale", "", StringComparison.Ordinal)
            .Replace("2 people, scale", "2 people", StringComparison.Ordinal);
        Complaint.Only(
            Read(
                unweighed
                    .Replace("**Weigh**", "**Weigh out**", StringComparison.Ordinal)
                    .Replace("2 people)", "2 people, scale)", StringComparison.Ordinal)
            ),
            Complaint.LineOf(_shipped, "1. **Weigh**"),
            "`Weigh out` weighs, and its brackets occupy no scale",
            "scale"
        );
        Complaint.Only(
            Read(unweighed.Replace("**Weigh**", "**Gather**", StringComparison.Ordinal)),
            Complaint.LineOf(_shipped, "## Method"),
            "No step says when the ingredients are weighed",
            "scale, small scale"
        );
    }

    [Fact]
    public void A_method_without_an_oven_says_so() =>
        Complaint.Only(
            Read(_shipped.Replace("oven 220", "220", StringComparison.Ordinal).Replace("oven 175", "175", StringComparison.Ordinal)),
            Complaint.LineOf(_shipped, "## Method"),
            "No step says what the oven is set to",
            "oven 190 °C"
        );
}
