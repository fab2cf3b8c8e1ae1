using ClassKit.Baking.GasBudgets;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Tests.Lessons;

/// <summary>A starter with its build, and what a batter's gas blows up, as the handbook writes them.</summary>
public sealed class StarterAndFoamTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    /// <summary>
    /// The shipped batter buns with a starter for their yeast: 40 of a starter at 100 % hold 20 of flour, so that the other flour is 80.
    /// </summary>
    private readonly string _bread = File.ReadAllText(Path.Combine(Repository.Lesson, "formulas/batter_buns.md"))
        .ReplaceLineEndings("\n")
        .Replace("| Bread flour | 100 |", "| Bread flour | 80 |", StringComparison.Ordinal)
        .Replace("| Instant yeast | 2 |", "| Sourdough starter, 100 % | 40 |", StringComparison.Ordinal)
        .Replace("salt and yeast", "salt", StringComparison.OrdinalIgnoreCase)
        .Replace(", for the yeast's sake", "", StringComparison.Ordinal)
        .Replace("leavening: yeast\n", "leavening: yeast\nstarter build: 1:4:4 at 24 °C for 10 h\n", StringComparison.Ordinal);

    public void Dispose() => _folder.Dispose();

    private Reading<LessonFormula> Read(string text) => LessonFormulaReader.Read(_folder.Write("batter_buns.md", text));

    /// <summary>
    /// By hand: 400 g of starter and a twentieth more are 420 g, in nine parts 46.67 g of ripe starter and 186.67 g each of flour and
    /// water.
    /// </summary>
    [Fact]
    public void A_build_is_read_and_mixed_to_the_full_gram_above()
    {
        var reading = Read(_bread);
        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        var build = reading.Model!.StarterBuild!;
        var starter = reading.Model.Formula.Lines.Single(line => line.Ingredient.StarterOf is not null).Ingredient;

        Assert.Equal((24, 10), (build.Temperature.Celsius, build.Hours));
        Assert.Equal([47, 187, 187], build.For(starter, Baking.Quantities.Mass.FromGrams(400)).Select(part => part.Mass.Grams));
    }

    [Theory]
    [InlineData("1:4:4 at 24 °C for 10 h", "1:4", "`starter build` is `1:4`", "`starter build: 1:4:4 at 24 °C for 10 h`")]
    [InlineData(
        "1:4:4 at 24 °C for 10 h",
        "1:4:2 at 24 °C for 10 h",
        "The build comes to 50 % water on its flour, and the formula has Sourdough starter, 100 %",
        "Make both the same"
    )]
    [InlineData("leavening: yeast\n", "leavening: yeast\nstructure: puffs\n", "`structure` is `puffs`", "pocket")]
    [InlineData("leavening: yeast\n", "leavening: yeast\nspecific gravity: 85\n", "`specific gravity` is 85", "from 0.2 to 1.4")]
    [InlineData("| Bread flour | 80 |", "| Bread flour | 100 |", "The flour adds up to 120 %", "20 % of it is in the starter")]
    public void What_does_not_fit_is_said(string find, string put, string found, string remedy)
    {
        var problem = Assert.Single(Read(Complaint.Break(_bread, find, put)).Problems);

        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Expected, StringComparison.Ordinal);
    }

    /// <summary>A file from elsewhere may hold anything. To try every way of cutting so many digits into three would take years.</summary>
    [Fact]
    public void Digits_without_end_are_refused_like_anything_else() =>
        Assert.Contains(
            "`starter build` is",
            Assert.Single(Read(Complaint.Break(_bread, "1:4:4 at 24 °C for 10 h", new string('1', 20_000))).Problems).Found,
            StringComparison.Ordinal
        );

    /// <summary>
    /// By hand: 400 g and a twentieth more are 420 g, in three parts 140 g each of ripe starter, flour and water; for 140 g of the first
    /// stage, 147 g in five parts, 29.4 g of ripe starter and 58.8 g each of flour and water. The first stands 6 h and is mixed 10 h
    /// before. Together 30 g of ripe starter and 199 g each are taken.
    /// </summary>
    [Fact]
    public void A_build_in_stages_feeds_each_stage_with_the_one_before()
    {
        var reading = Read(Complaint.Break(_bread, "1:4:4 at 24 °C for 10 h", "1:2:2 at 26 °C for 6 h, then 1:1:1 at 28 °C for 4 h"));
        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        var starter = reading.Model!.Formula.Lines.Single(line => line.Ingredient.StarterOf is not null).Ingredient;
        var mass = Baking.Quantities.Mass.FromGrams(400);
        var stages = reading.Model.StarterBuild!.StagesFor(starter, mass);

        Assert.Equal(
            ["30 59 59 at 26, 10 h before", "140 140 140 at 28, 4 h before"],
            stages.Select(stage =>
                FormattableString.Invariant(
                    $"{string.Join(' ', stage.Parts.Select(part => part.Mass.Grams))} at {stage.Build.Temperature.Celsius}, {stage.HoursBefore} h before"
                )
            )
        );
        Assert.Equal([30, 199, 199], reading.Model.StarterBuild.For(starter, mass).Select(part => part.Mass.Grams));
    }

    /// <summary>
    /// By hand: a ripe one of 50 % water is 2/3 flour; one part of it with one of flour and one of water is 5/3 flour and 4/3 water, 80 %.
    /// </summary>
    [Fact]
    public void Stages_that_are_wetter_than_each_other_come_to_what_they_hold_together()
    {
        var text = Complaint.Break(_bread, "1:4:4 at 24 °C for 10 h", "1:2:1 at 26 °C for 6 h, then 1:1:1 at 28 °C for 4 h");

        Assert.Equal(
            80,
            Read(
                text.Replace("starter, 100 %", "starter, 80 %", StringComparison.Ordinal)
                    .Replace("| Bread flour | 80 |", "| Bread flour | 77.77777777777777 |", StringComparison.Ordinal)
            ).Model!.StarterBuild!.HydrationPercent,
            1e-9
        );
        Assert.Contains("The build comes to 80 % water on its flour", Assert.Single(Read(text).Problems).Found, StringComparison.Ordinal);
    }

    /// <summary>Whose bag says medium rye flour reads so on every page, and what the method calls flour is still that.</summary>
    [Fact]
    public void An_ingredient_is_called_as_its_author_calls_it()
    {
        var reading = Read(Complaint.Break(_bread, "| Bread flour | 80 |", "| Bread flour | 60 |\n| medium rye flour | 20 |"));
        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));

        Assert.Empty(reading.Doubts);
        Assert.Equal("Medium rye flour", reading.Model!.Formula.Lines.Single(line => line.Ingredient.Id == "rye_flour").Ingredient.Name);
        Assert.Equal("Bread flour", reading.Model.Formula.Lines[0].Ingredient.Name);
    }

    [Theory]
    [InlineData("0.5:2:2")]
    [InlineData("1:4.0:4")]
    public void Parts_may_be_written_with_decimals(string parts) =>
        Assert.True(Read(Complaint.Break(_bread, "1:4:4 at", parts + " at")).Succeeded);

    [Theory]
    [InlineData("0:4:4")]
    [InlineData("1:0.0:4")]
    [InlineData(":4:4")]
    public void No_part_is_nothing(string parts) => Assert.False(Read(Complaint.Break(_bread, "1:4:4 at", parts + " at")).Succeeded);

    [Fact]
    public void A_foam_and_its_specific_gravity_are_read()
    {
        var bread = Read(
            Complaint.Break(_bread, "leavening: yeast\n", "leavening: yeast\nstructure: foam\nspecific gravity: 0.48\n")
        ).Model!;

        Assert.Equal((CrumbStructure.Foam, 0.48), (bread.Structure, bread.SpecificGravity));
    }
}
