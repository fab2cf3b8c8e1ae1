using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Tests.Exercises;

public sealed class ExerciseReaderTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private Reading<Exercise> Read(string text, string name = "water.md") => ExerciseReader.Read(_folder.Write(name, text));

    [Fact]
    public void A_sound_exercise_is_read_in_full()
    {
        var exercise = Read(SampleExercise.Text).Model;

        Assert.NotNull(exercise);
        Assert.Equal("water", exercise.Id);
        Assert.Equal("Water for the dough", exercise.Title);
        Assert.Equal("hydration", exercise.Skill);
        Assert.Equal(ExerciseLevel.Guided, exercise.Level);
        Assert.Equal(5, exercise.Minutes);
        Assert.Equal("You have {flour} of flour and want a hydration of {hydration}.", exercise.Problem);
        Assert.Equal(
            [new("flour", "Bread flour", "g", 400, 900, 50), new("hydration", "Hydration", "%", 0.6m, 0.7m, 0.01m)],
            exercise.Givens
        );
        Assert.Equal(["=water<600"], exercise.Constraints.Select(constraint => constraint.Text));
        Assert.Equal(["water", "dough"], exercise.Parts.Select(part => part.Id));
        Assert.Equal(["Flour is 100 %.", "Then add up."], exercise.Hints);

        var water = exercise.Parts[0];
        Assert.Equal("How much water do you weigh?", water.Ask);
        Assert.Equal("=flour*hydration", water.Key.Text);
        Assert.Equal(Tolerance.Absolute(1), water.Tolerance);
        Assert.Equal(2, water.Points);
        Assert.True(water.FormulaAsked);
        var misconception = Assert.Single(water.Misconceptions);
        Assert.Equal("divided", misconception.Id);
        Assert.Equal("=flour/hydration", misconception.Formula.Text);
        Assert.Equal("You divided. Multiply the flour by the hydration.", misconception.Words);

        Assert.Equal(Tolerance.Relative(0.005), exercise.Parts[1].Tolerance);
        Assert.False(exercise.Parts[1].FormulaAsked);
    }

    [Fact]
    public void A_tolerance_in_percent_of_a_percentage_is_in_percentage_points()
    {
        var text = Complaint.Break(SampleExercise.Text, "- Unit: g\n- Tolerance: 1 g", "- Unit: %\n- Tolerance: 0.5 %");

        Assert.Equal(Tolerance.Absolute(0.005), Read(text).Model!.Parts[0].Tolerance);
    }

    [Theory]
    [InlineData("g", "0.1 g", 0.1)]
    [InlineData("%", "1 %", 0.01)]
    public void A_rounding_may_stand_in_place_of_a_tolerance(string unit, string rounding, double step)
    {
        var text = Complaint.Break(SampleExercise.Text, "- Unit: g\n- Tolerance: 1 g", $"- Unit: {unit}\n- Rounding: {rounding}");

        Assert.Equal(Tolerance.Rounding(step), Read(text).Model!.Parts[0].Tolerance);
    }

    [Theory]
    [InlineData("=ROUNDDOWN(flour*hydration,0)", "down")]
    [InlineData("=INT(flour*hydration)", "down")]
    [InlineData("=CEILING(flour*hydration,5)", "up")]
    public void A_key_that_rounds_one_way_is_doubted_beside_a_rounding_to_the_nearest(string key, string way)
    {
        var text = Complaint.Break(
            Complaint.Break(SampleExercise.Text, "`=flour*hydration`", $"`{key}`"),
            "- Unit: g\n- Tolerance: 1 g",
            "- Unit: g\n- Rounding: 1 g"
        );

        var doubt = Assert.Single(Read(text).Doubts);
        Assert.Equal(29, doubt.Line);
        Assert.Contains($"The key rounds {way}, and `Rounding` says to the nearest `1 g`", doubt.Found, StringComparison.Ordinal);
        Assert.Contains("`- Tolerance: 0 g`", doubt.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=ROUND(flour*hydration,0)")]
    [InlineData("=flour*hydration")]
    public void A_rounding_to_the_nearest_is_not_doubted_where_the_key_rounds_so_or_not_at_all(string key)
    {
        var text = Complaint.Break(
            Complaint.Break(SampleExercise.Text, "`=flour*hydration`", $"`{key}`"),
            "- Unit: g\n- Tolerance: 1 g",
            "- Unit: g\n- Rounding: 1 g"
        );

        Assert.Empty(Read(text).Doubts);
    }

    [Fact]
    public void A_constant_is_written_as_one_number()
    {
        var text = Complaint.Break(SampleExercise.Text, "60% to 70% by 1%", "65 %");

        Assert.Equal(new Given("hydration", "Hydration", "%", 0.65m, 0.65m, 0), Read(text).Model!.Givens[1]);
    }

    [Theory]
    [InlineData("\uFEFF")]
    [InlineData("")]
    public void Byte_order_marks_and_windows_line_ends_change_nothing(string mark)
    {
        var reading = Read(mark + SampleExercise.Text.ReplaceLineEndings("\r\n"));

        Assert.Empty(reading.Problems);
        Assert.Equal("You divided. Multiply the flour by the hydration.", reading.Model!.Parts[0].Misconceptions[0].Words);
    }

    [Theory]
    [InlineData("skill: hydration\n", "", 1, "`skill` is missing", "`skill: scaling and yield`")]
    [InlineData("skill:", "skil:", 2, "`skil` is not a key", "Did you mean `skill`?")]
    [InlineData("source: common practice, no source", "source:", 5, "`source` is empty", "behind the colon")]
    [InlineData("level: guided", "level: giuded", 3, "`level` is `giuded`", "Did you mean `guided`?")]
    [InlineData("level: guided", "level: wild", 3, "`level` is `wild`", "guided, standard, open")]
    [InlineData("minutes: 5", "minutes: five", 4, "`minutes` is `five`", "Write digits")]
    [InlineData("minutes: 5", "minutes: 0", 4, "`minutes` is 0", "from 1 to 10000")]
    [InlineData("minutes: 5", "minutes: 2.5", 4, "`minutes` is 2.5", "A whole number, from 1")]
    [InlineData("minutes: 5", "minutes: 5\nminutes: 6", 5, "`minutes` is here a second time; the first is in line 4", "Keep one")]
    [InlineData("minutes: 5", "minutes: 5\nauthor: me", 5, "`author` is not a key", "Known here: skill, level, minutes, source, effort")]
    [InlineData("minutes: 5", "minutes: {a: 5}", 4, "deeper than one level", "`key: value`")]
    [InlineData("source: common practice", "source: see: common practice", 5, "cannot be read from here on", "Put quotes around")]
    [InlineData("# Water for the dough", "Water for the dough", null, "There is no title", "`# Title`")]
    [InlineData("{hydration}.", "{hydraton}.", 10, "`{hydraton}` stands for no given", "Did you mean `hydration`?")]
    [InlineData("You have {flour} of flour and want a hydration of {hydration}.", "", 8, "The problem has no text", "`{name}`")]
    [InlineData("## Given", "## Givens", 12, "`## Givens` is not a section", "Did you mean `Given`?")]
    [InlineData("| Values |", "| Value |", 14, "The table has no column `Values`", "Name, What it is, Unit, Values", 2)]
    [InlineData("| flour | Bread", "| b5 | Bread", 16, "`b5` cannot be the name of a given", "nothing that a spreadsheet takes for a cell")]
    [InlineData("| flour | Bread", "| Flour | Bread", 16, "`Flour` cannot be the name of a given", "lower-case letters")]
    [InlineData("400 to 900 by 50", "900 to 400 by 50", 16, "the lowest value is above the highest", "lower one first")]
    [InlineData("400 to 900 by 50", "400 to 900 by 0", 16, "the step is not above 0", "how far apart")]
    [InlineData("400 to 900 by 50", "400 to 920 by 50", 16, "the steps do not reach the highest value", "whole number of steps")]
    [InlineData("400 to 900 by 50", "400 to 900 by 0.001", 16, "more than 100000 values", "larger step")]
    [InlineData("400 to 900 by 50", "400-900", 16, "`400-900`", "`400 to 900 by 50`")]
    [InlineData("400 to 900 by 50", "400,5", 16, "`400,5`", "Write a decimal point: 400.5")]
    [InlineData("60% to 70% by 1%", "60 to 70 by 1", 17, "`60` has no percent sign", "as in `60%`")]
    [InlineData("| g | 400 to", "| g | 400% to", 16, "`400%` is in percent, but the unit is `g`", "`Unit` as well")]
    [InlineData(
        "`=water<600`",
        "`=wasser<600`",
        21,
        "uses `wasser`, which is neither a given nor an earlier part",
        "Did you mean `water`?"
    )]
    [InlineData("How much water do you weigh?\n", "", 23, "`water` asks nothing", "Write the question")]
    [InlineData("`=flour*hydration`", "`=flour*`", 27, "is no formula at character 8", "as in a spreadsheet cell")]
    [InlineData("`=flour*hydration`", "=flour*hydration", 27, "The key, =flour*hydration, has no back quotes", "Write `=flour*hydration`")]
    [InlineData("`=flour*hydration`", "`=flour*hydratoin`", 27, "uses `hydratoin`", "Did you mean `hydration`?")]
    [InlineData("`=flour*hydration`", "`=flour*dough`", 27, "uses `dough`, which is not answered before it", "asked in line 40")]
    [InlineData("`=flour*hydration`", "`=water*hydration`", 27, "uses `water`, which is not answered before it", "asked in line 23")]
    [InlineData(
        "`=flour*hydration`",
        "`=flour/(hydration-0.6)`",
        23,
        "gives #DIV/0! when every given is at its lowest",
        "a number for every student"
    )]
    [InlineData(
        "`=flour/hydration`",
        "`=B5/hydration`",
        35,
        "The misconception `divided`, `=B5/hydration`, refers to cells",
        "flour, hydration"
    )]
    [InlineData("- Key: `=flour*hydration`\n", "", 23, "has no line `- Key: ...`", "Add it to the list")]
    [InlineData("- Points: 2", "- Points: 0", 30, "`Points` is 0", "above 0")]
    [InlineData("- Points: 2", "- Points: 2\n- Poinst: 3", 31, "`Poinst` is not known here", "Did you mean `Points`?")]
    [InlineData("- Tolerance: 1 g", "- Tolerance: 1 kg", 29, "The tolerance is `1 kg`", "0.5 % of the answer")]
    [InlineData("- Tolerance: 1 g", "- Tolerance: -1 g", 29, "The tolerance is -1", "0 or more")]
    [InlineData("- Answer with: formula", "- Answer with: formla", 31, "`Answer with` is `formla`", "Did you mean `formula`?")]
    [InlineData(
        "### Misconception: divided",
        "### Misconception: r1c1",
        33,
        "`r1c1` cannot be the name of a misconception",
        "lower-case letters"
    )]
    [InlineData("### Misconception: divided", "### Mistake: divided", 33, "`### Mistake: divided` is not a section", "Misconception: name")]
    [InlineData("You divided. Multiply the flour by\nthe hydration.\n", "", 33, "`divided` has no words", "in a sentence or two")]
    [InlineData("## Part: dough", "## Part: flour", 40, "The name `flour` is taken by line 16", "Choose another")]
    [InlineData("## Hints", "## Hint", 50, "`## Hint` is not a section", "Did you mean `Hints`?")]
    [InlineData("2. Then add up.", "Then add up.\n\nAnd check.", 55, "does not belong to the list in `Hints`", "Begin every item")]
    public void A_mistake_is_named_with_its_line_and_the_way_out(
        string find,
        string replacement,
        int? line,
        string found,
        string remedy,
        int problems = 1
    )
    {
        Complaint.Among(Read(Complaint.Break(SampleExercise.Text, find, replacement)), problems, line, found, remedy);
    }
}
