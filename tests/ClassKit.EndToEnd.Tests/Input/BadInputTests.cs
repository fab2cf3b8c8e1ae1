using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Input;

/// <summary>Bad input gets a message with place and remedy and the contract's exit code, and leaves nothing behind.</summary>
public sealed class BadInputTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("out");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_lesson_that_is_not_there()
    {
        Refused(["one-tin-three-lift"], "pack", _folder.Of("one-tin-three-lift"), "--out", Out);
    }

    [Fact]
    public void A_front_matter_that_is_no_yaml()
    {
        var lesson = CopyLesson();
        File.WriteAllText(Path.Combine(lesson, "lesson.md"), "---\nperiod: [150 min\n---\n\n# One Tin\n");

        Refused(["lesson.md:"], "pack", lesson, "--out", Out);
    }

    [Fact]
    public void An_ingredient_nobody_knows_is_named_with_its_line_and_the_nearest_known_one()
    {
        var lesson = CopyLesson();
        var file = Path.Combine(lesson, "formulas", "popovers.md");
        File.WriteAllText(file, File.ReadAllText(file).Replace("Whole milk", "Whole mlik", StringComparison.Ordinal));
        var line = File.ReadAllLines(file).ToList().FindIndex(text => text.Contains("mlik", StringComparison.Ordinal)) + 1;

        Refused([$"popovers.md:{line}:", "mlik", "Whole milk"], "pack", lesson, "--out", Out);
    }

    [Fact]
    public void An_exercise_that_no_draw_can_satisfy_is_found_by_check()
    {
        var lesson = CopyLesson();
        var file = Path.Combine(lesson, "exercises", "dough_temperature.md");
        File.WriteAllText(
            file,
            File.ReadAllText(file).Replace("`=AND(friction>=6,friction<=16)`", "`=friction>500`", StringComparison.Ordinal)
        );

        var run = ClassKitRun.Of("check", lesson);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("friction>500", run.Problems, StringComparison.Ordinal);
    }

    [Fact]
    public void A_roster_with_an_id_twice()
    {
        var roster = _folder.Of("roster.csv");
        File.WriteAllText(roster, "id,name\nada,Ada Berg\nben,Ben Okoye\nada,Ada Lindt\n");

        Refused(["roster.csv:4:", "ada"], "deal", Checkout.Demo.Lesson, "--roster", roster, "--out", Out);
    }

    [Fact]
    public void An_output_folder_that_is_a_file()
    {
        File.WriteAllText(Out, "mine");

        var run = ClassKitRun.Of("pack", Checkout.Demo.Lesson, "--out", Out);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("is a file", run.Problems, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Out));
    }

    [Fact]
    public void An_output_folder_with_somebody_elses_file_of_the_same_name()
    {
        Directory.CreateDirectory(Out);
        File.WriteAllText(Path.Combine(Out, "index.html"), "mine");

        var run = ClassKitRun.Of("pack", Checkout.Demo.Lesson, "--out", Out);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("index.html is there already", run.Problems, StringComparison.Ordinal);
        Assert.Equal(["index.html"], Directory.EnumerateFileSystemEntries(Out).Select(Path.GetFileName));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Out, "index.html")));
    }

    [Fact]
    public void Grades_are_never_written_over_the_deal()
    {
        ClassKitRun.Of("deal", Checkout.Demo.Lesson, "--roster", Checkout.Demo.Roster, "--out", Out).Done();
        var before = FolderContent.Digests(Out);

        var run = ClassKitRun.Of("grade", Out, "--returned", Path.Combine(Out, "workbooks"), "--out", Out);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("written by `deal`", run.Problems, StringComparison.Ordinal);
        Assert.Equal(before, FolderContent.Digests(Out));
    }

    [Fact]
    public void A_dealt_folder_without_or_with_a_broken_deal()
    {
        var dealt = Directory.CreateDirectory(_folder.Of("dealt")).FullName;
        Refused(["dealt.json", "no such file"], "grade", dealt, "--returned", dealt, "--out", Out);

        File.WriteAllText(Path.Combine(dealt, "dealt.json"), "{\n  \"version\": 1,\n  \"lesson\": 5\n}");
        Refused(["dealt.json:3", "lesson"], "grade", dealt, "--returned", dealt, "--out", Out);
    }

    [Fact]
    public void A_returned_folder_that_is_not_there()
    {
        ClassKitRun.Of("deal", Checkout.Demo.Lesson, "--roster", Checkout.Demo.Roster, "--out", _folder.Of("dealt")).Done();

        Refused(["nowhere", "no such folder"], "grade", _folder.Of("dealt"), "--returned", _folder.Of("nowhere"), "--out", Out);
    }

    [Theory]
    [InlineData]
    [InlineData("bake")]
    [InlineData("pack")]
    [InlineData("pack", "lesson")]
    [InlineData("deal", "lesson", "--roster", "r.csv", "--out", "o", "--seed", "minus")]
    [InlineData("tour", "--quickly")]
    public void Wrong_usage_is_exit_code_2_and_says_where_to_look(params string[] arguments)
    {
        var run = ClassKitRun.Of(arguments);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--help", run.Problems, StringComparison.Ordinal);
    }

    private void Refused(IReadOnlyList<string> told, params string[] arguments)
    {
        var run = ClassKitRun.Of(arguments);

        Assert.Equal(1, run.ExitCode);
        Assert.All(told, words => Assert.Contains(words, run.Problems, StringComparison.Ordinal));
        Assert.False(Path.Exists(Out), "Something was written.");
        Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(_folder.Path), path =>
            Path.GetFileName(path).StartsWith(".out", StringComparison.Ordinal)
        );
    }

    private string CopyLesson() => Checkout.CopyLesson(_folder);
}
