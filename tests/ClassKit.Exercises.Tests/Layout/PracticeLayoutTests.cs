using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Tests.Layout;

public sealed class PracticeLayoutTests
{
    private static readonly CellFormula AnyKey = CellFormula.Of("=flour");

    [Fact]
    public void No_two_cells_share_an_address_a_name_or_a_tag()
    {
        var layout = PracticeLayout.For([Exercise("mix", "Mix", 4, 30), Exercise("bake", "Bake", 0, 1), Exercise("cool", "Cool", 12, 3)]);

        var answers = layout.Exercises.SelectMany(exercise => exercise.Answers).ToList();
        var givens = layout.Exercises.SelectMany(exercise => exercise.Givens).ToList();
        Assert.Equal(answers.Count, answers.Select(answer => answer.Tag).Distinct().Count());
        var addresses = answers.Select(answer => answer.Address).Concat(givens.Select(given => given.Address)).ToList();
        Assert.Equal(addresses.Count, addresses.Distinct().Count());
        var names = answers.Select(answer => answer.DefinedName).Concat(givens.Select(given => given.DefinedName)).ToList();
        Assert.Equal(names.Count, names.Distinct().Count());
    }

    [Fact]
    public void A_sheet_runs_from_title_through_givens_and_answers_to_the_scratch_area()
    {
        var exercise = PracticeLayout.For([Exercise("mix", "Mix", 2, 2)]).Of("mix");

        Assert.Equal(["C7", "C8"], exercise.Givens.Select(given => given.Address.Cell));
        Assert.Equal(["C11", "C12"], exercise.Answers.Select(answer => answer.Address.Cell));
        Assert.Equal(["i", "ii"], exercise.Givens.Select(given => given.Tag));
        Assert.Equal(["1a", "1b"], exercise.Answers.Select(answer => answer.Tag));
        Assert.Equal("B15", exercise.ScratchFrom.Cell);
        Assert.Equal("F28", exercise.ScratchTo.Cell);
    }

    [Fact]
    public void The_places_of_a_variant_carry_its_values_and_names()
    {
        var exercise = Exercise("mix", "Mix", 1, 1);
        var layout = PracticeLayout.For([exercise]);
        var variant = new Variant(
            exercise,
            new Dictionary<string, decimal> { ["g0"] = 0.65m },
            new Dictionary<string, double> { ["p0"] = 325 }
        );
        var student = new DealtStudent(new("ada-berg", "Ada Berg"), "", [variant]);

        Assert.Equal([new DealtGiven("mix", "g0", "mix_g0", new CellAddress("1 Any", 7, 3), "i", 0.65m)], layout.GivensOf(student));
        Assert.Equal([new DealtAnswer("mix", "p0", "mix_p0", new CellAddress("1 Any", 10, 3), "1a", 325)], layout.AnswersOf(student));
    }

    [Fact]
    public void Names_that_would_clash_are_found_before_anything_is_laid_out()
    {
        // a + b_c and a_b + c both make a_b_c
        var first = Exercise("a", "A", 0, 0) with { Givens = [new Given("b_c", "", "g", 1, 1, 0)] };
        var second = Exercise("a_b", "B", 0, 0) with { Givens = [new Given("c", "", "g", 1, 1, 0)] };

        Assert.Equal("a_b_c", PracticeLayout.FirstNameClash([first, second]));
        Assert.Throws<ArgumentException>(() => PracticeLayout.For([first, second]));
        Assert.Null(PracticeLayout.FirstNameClash([first, Exercise("b", "B", 2, 2)]));
    }

    [Theory]
    [InlineData("Hydration", "1 Hydration")]
    [InlineData("  Two\ttabs\nand a line ", "1 Two tabs and a line")]
    [InlineData("Soda/acid: how much? [v2]*\\", "1 Soda acid how much v2")]
    [InlineData("baker's percentage", "1 Percentage")]
    [InlineData("yields, the bakers'", "1 Yields, the bakers")]
    [InlineData("", "1")]
    [InlineData("Scaling a dough to pieces with a loss", "1 Scaling a dough to pieces")]
    [InlineData("Sauerteigführungsberechnungsgrundlage", "1 Sauerteigführungsberechnungsg")]
    public void A_skill_becomes_a_short_sheet_name_that_programs_accept(string skill, string sheet)
    {
        Assert.Equal(sheet, PracticeLayout.For([Exercise("x", "X", 1, 1) with { Skill = skill }]).Exercises[0].Sheet);
    }

    [Fact]
    public void A_sheet_name_is_never_cut_within_a_character()
    {
        // 29 units are left behind "1 "; the cut would fall inside the fifteenth croissant
        var sheet = PracticeLayout
            .For([Exercise("x", "X", 1, 1) with { Skill = string.Concat(Enumerable.Repeat("🥐", 20)) }])
            .Exercises[0]
            .Sheet;

        Assert.Equal("1 " + string.Concat(Enumerable.Repeat("🥐", 14)), sheet);
    }

    [Fact]
    public void Tags_never_look_like_a_cell()
    {
        var layout = PracticeLayout.For([Exercise("x", "X", 40, 40)]).Exercises[0];

        Assert.All(layout.Givens.Select(given => given.Tag).Concat(layout.Answers.Select(answer => answer.Tag)), tag =>
            Assert.False(CellAddress.TryParse("", tag, out _), tag)
        );
        Assert.Equal("xl", layout.Givens[39].Tag);
        Assert.Equal("1aa", layout.Answers[26].Tag);
    }

    private static Exercise Exercise(string id, string title, int givens, int parts) =>
        new(
            id,
            title,
            "any",
            ExerciseLevel.Standard,
            5,
            "common practice, no source",
            "",
            [.. Enumerable.Range(0, givens).Select(index => new Given($"g{index}", "", "g", 1, 1, 0))],
            [],
            [.. Enumerable.Range(0, parts).Select(index => new Part($"p{index}", "", AnyKey, "g", Tolerance.Absolute(1), 1, true, []))],
            []
        );
}
