using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Tests.Lessons;

public sealed class LessonReaderTests : IDisposable
{
    private readonly ContentFolder _folder = new();
    private readonly string _lesson;

    public LessonReaderTests()
    {
        _lesson = _folder.Copy(Repository.Lesson, "lessons/one-tin-three-lifts");
        _folder.Copy(Repository.Rubrics, "rubrics");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_lesson_is_read_with_all_that_it_links_to()
    {
        var lesson = LessonReader.Read(_lesson).Model;

        Assert.NotNull(lesson);
        Assert.Equal("one-tin-three-lifts", lesson.Id);
        Assert.Equal("One Tin, Three Lifts", lesson.Title);
        Assert.Equal(["batter_buns", "popovers", "buttermilk_muffins"], lesson.Formulas.Select(formula => formula.Formula.Id));
        Assert.Equal("hydration", lesson.Exercises[0].Id);
        Assert.Equal("calculation-marks", lesson.Marking.Id);
        Assert.Equal("bench-work", lesson.BenchRubric.Id);
        Assert.Equal(13, lesson.TalkingPoints.Count);
        Assert.Equal(
            (ClassMoment.Step, "popovers", "Bake hot"),
            (lesson.TalkingPoints[6].Moment, lesson.TalkingPoints[6].FormulaId, lesson.TalkingPoints[6].StepName)
        );
        Assert.DoesNotContain('>', lesson.TalkingPoints[0].Say.Written);
        Assert.StartsWith("### What you are going to find out", lesson.HandoutText.Written, StringComparison.Ordinal);
        Assert.StartsWith("Most likely the popover: it is forecast at", lesson.Questions[0].ModelAnswer.Written, StringComparison.Ordinal);
        Assert.Contains(lesson.Failures, failure =>
            failure.Sign.Written == "Muffins peaked, with tunnels"
            && failure.Cure.Written.StartsWith("A dozen strokes", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Demonstrations_and_what_is_set_aside_are_read()
    {
        var lesson = LessonReader.Read(_lesson).Model!;

        Assert.Equal((10, 25, 5), (lesson.SetAside.SetupMinutes, lesson.SetAside.TastingMinutes, lesson.SetAside.CleanupMinutes));
        Assert.Equal(
            ("Filling a hot tin", 3, "popovers", "Fill"),
            (
                lesson.Demonstrations[1].Name,
                lesson.Demonstrations[1].Minutes,
                lesson.Demonstrations[1].FormulaId,
                lesson.Demonstrations[1].StepName
            )
        );
        Assert.StartsWith("A rehearsal with a cold tin", lesson.Demonstrations[1].Text.Written, StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_may_be_named_instead_of_its_folder() =>
        Assert.Equal("one-tin-three-lifts", LessonReader.Read(Path.Combine(_lesson, "lesson.md")).Model?.Id);

    [Fact]
    public void The_pieces_of_a_lesson_are_made_from_one_mass_of_batter() =>
        Assert.Single(LessonReader.Read(_lesson).Model!.Formulas.Select(formula => formula.PieceMass).Distinct());

    [Fact]
    public void A_folder_that_is_not_there_is_named_with_one_that_is()
    {
        Complaint.Only(
            LessonReader.Read(_lesson.Replace("three", "tree", StringComparison.Ordinal)),
            null,
            "no such folder",
            "Did you mean one-tin-three-lifts?"
        );
    }

    [Fact]
    public void A_folder_without_a_lesson_says_which_file_is_missing()
    {
        var problem = Assert.Single(LessonReader.Read(Path.Combine(_folder.Path, "rubrics")).Problems);

        Assert.EndsWith("rubrics/lesson.md", problem.File, StringComparison.Ordinal);
        Assert.Contains("no such file", problem.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        "- **Batter buns: Mix.**",
        "- **Batter bun: Mix.**",
        "",
        "`Batter bun` is not a bread of this lesson",
        "Did you mean `Batter buns`?"
    )]
    [InlineData(
        "- **Batter buns: Mix.**",
        "- **Batter buns: Mixing it.**",
        "",
        "Batter buns has no step `Mixing it`",
        "Known here: Weigh, Warm, Mix"
    )]
    [InlineData(
        "{popovers.height}",
        "{popovers.hight}",
        "",
        "`{popovers.hight}` stands for no computed value",
        "Did you mean `popovers.height`?"
    )]
    [InlineData(
        "{popovers.height}",
        "{popover.height}",
        "",
        "`{popover.height}` stands for no computed value",
        "Did you mean `popovers.height`?"
    )]
    [InlineData("{popovers.height}", "{heights}", "", "`{heights}` stands for no computed value", "Known here: students, teams")]
    [InlineData(
        "{batter_buns.liquid_temperature}",
        "{batter_buns.liquid_temprature}",
        "",
        "`{batter_buns.liquid_temprature}` stands for no computed value",
        "Did you mean `batter_buns.liquid_temperature`?"
    )]
    [InlineData("With: ", "With: {teams} of ", "", "`{teams}` stands where no value is put in", "Name values in sentences only")]
    [InlineData("- **Tasting.**", "- **Tastng.**", "", "`Tastng` is no moment of the class", "Did you mean `Tasting`?")]
    [InlineData("period: 150 min", "period: 150", "", "`150`, without a unit", "`150 min`")]
    [InlineData("calculation-marks.md", "calculation-mark.md", "", "There is no file", "Did you mean calculation-marks.md?")]
    [InlineData("(formulas/popovers.md)", "(formulas/popover.md)", "", "formulas/popover.md`", "Did you mean popovers.md?")]
    [InlineData("- [Popovers](formulas/popovers.md)\n", "", "## Formulas", "`formulas/popovers.md` is not listed", "Add a link")]
    [InlineData(
        "- [Popovers](formulas/popovers.md)",
        "- Popovers, formulas/popovers.md",
        "",
        "This item reads `Popovers, formulas",
        "[Title](formulas/name.md)"
    )]
    [InlineData(
        "- [Popovers](formulas/popovers.md)",
        "- [Popovers](formulas/popovers.md)\n- [Puffs](formulas/../formulas/popovers.md)",
        "- [Puffs]",
        "is listed a second time",
        "Keep one"
    )]
    [InlineData("[Popovers](", "[Puffs](", "", "The link reads `Puffs`, but the file's title is `Popovers`", "Use the file's title")]
    [InlineData("setup: 10 min", "setup: 10", "", "`setup` is `10`, without a unit", "`10 min`")]
    [InlineData("setup: 10 min", "set-up: 10 min", "", "`set-up` is not a key", "Did you mean `setup`?")]
    [InlineData("before Popovers: Pierce", "before Popovers: Peirce", "", "Popovers has no step `Peirce`", "Did you mean `Pierce`?")]
    [InlineData("before Popovers: Pierce", "before Popover: Pierce", "", "`Popover` is not a bread", "Did you mean `Popovers`?")]
    [InlineData(
        "(3 min, before Popovers: Fill, scale, no oven)",
        "(3 minutes)",
        "",
        "This demonstration reads `**Filling a hot tin**",
        "before Batter buns: Stir down"
    )]
    [InlineData(
        "(3 min, before Popovers: Fill, scale, no oven)",
        "(3 min, Popovers: Fill, no oven)",
        "",
        "The demonstration's brackets hold `Popovers: Fill`",
        "before Popovers: Fill"
    )]
    [InlineData("(3 min, before Popovers: Fill, scale, no oven)", "(0 min, before Popovers: Fill, no oven)", "", "takes 0 min", "how long")]
    [InlineData(
        "(3 min, before Popovers: Fill, scale, no oven)",
        "(3 min, before Popovers: Fill)",
        "",
        "names an oven, and its brackets occupy none",
        "oven 220 °C, bakes 35 min"
    )]
    [InlineData(
        "(3 min, before Popovers: Fill, scale, no oven)",
        "(3 min, before Popovers: Fill, oven 220 °C)",
        "",
        "do not say both how hot and how long",
        "bakes 35 min",
        2
    )]
    [InlineData(
        "(3 min, before Popovers: Fill, scale, no oven)",
        "(3 min, before Popovers: Fill, oven 220 °C, bakes 2 min)",
        "",
        "what it bakes 2 min",
        "at least as long",
        2
    )]
    [InlineData(
        "(3 min, before Popovers: Fill, scale, no oven)",
        "(3 min, before Popovers: Fill, oven 220 °C, bakes 35 min)",
        "",
        "no ingredients are weighed out",
        "*Ingredients:"
    )]
    [InlineData(
        "(3 min, before Batter buns: Warm, burner)",
        "(3 min, before Batter buns: Warm)",
        "",
        "names a pan, and its brackets occupy no burner",
        "Write `burner`"
    )]
    [InlineData("100 g Whole milk", "some Whole milk", "", "ingredients hold `some Whole milk`", "250 g Whole milk")]
    [InlineData("100 g Whole milk", "100 g Hole milk", "", "`Hole milk` is not an ingredient", "Did you mean `Whole milk`?")]
    [InlineData("| Sign | Cause | Cure |", "| Sign | Reason | Cure |", "", "The table has no column `Cause`", "Sign, Cause, Cure", 2)]
    public void A_mistake_is_named_with_its_line_and_the_way_out(
        string find,
        string replacement,
        string? at,
        string found,
        string remedy,
        int problems = 1
    )
    {
        var file = Path.Combine(_lesson, "lesson.md");
        var sound = File.ReadAllText(file).ReplaceLineEndings("\n");
        var broken = Complaint.Break(sound, find, replacement);
        File.WriteAllText(file, broken);

        Complaint.Among(LessonReader.Read(_lesson), problems, Complaint.LineFor(at, sound, find, broken), found, remedy);
    }

    [Fact]
    public void Mistakes_in_several_files_are_told_together()
    {
        File.WriteAllText(Path.Combine(_lesson, "exercises/yeast.md"), "# Yeast\n");
        File.WriteAllText(Path.Combine(_lesson, "formulas/popovers.md"), "---\nleavening: steam\n");

        var reading = LessonReader.Read(_lesson);

        Assert.Contains(reading.Problems, problem =>
            problem.File.EndsWith("exercises/yeast.md", StringComparison.Ordinal)
            && problem.Found.Contains("`skill` is missing", StringComparison.Ordinal)
        );
        Complaint.One(
            Assert.Single(reading.Problems, problem => problem.File.EndsWith("formulas/popovers.md", StringComparison.Ordinal)),
            1,
            "begin here with `---` and never end",
            "`---`"
        );
    }
}
