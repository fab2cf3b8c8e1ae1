using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Beginning;

/// <summary>A teaching folder begun from nothing: sound at once, and good for all that a lesson is for.</summary>
public sealed class BeginTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Mine => _folder.Of("my-teaching");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void It_is_checked_packed_and_dealt_as_it_is()
    {
        ClassKitRun.Of("begin", "--out", Mine).Done();

        Assert.Equal("7 checked, no problem found.", ClassKitRun.Of("check", Mine).Done().Output.Trim());
        ClassKitRun
            .Of(
                "pack",
                Path.Combine(Mine, "lessons", "milk-scones"),
                "--class",
                Path.Combine(Mine, "class.md"),
                "--out",
                _folder.Of("pack")
            )
            .Done();
        ClassKitRun
            .Of(
                "deal",
                Path.Combine(Mine, "lessons", "milk-scones"),
                "--roster",
                Path.Combine(Mine, "roster.csv"),
                "--out",
                _folder.Of("dealt")
            )
            .Done();
        Assert.DoesNotContain(
            "<!--",
            string.Concat(Directory.EnumerateFiles(_folder.Of("pack"), "*.html").Select(File.ReadAllText)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_file_says_in_remarks_what_may_be_changed()
    {
        ClassKitRun.Of("begin", "--out", Mine).Done();

        Assert.All(
            Directory
                .EnumerateFiles(Mine, "*", SearchOption.AllDirectories)
                .Where(file => Path.GetFileName(file)[0] != '.' && !file.EndsWith("README.md", StringComparison.Ordinal)),
            file => Assert.Matches("<!--|(?m)^# ", File.ReadAllText(file))
        );
    }

    [Fact]
    public void One_more_lesson_class_and_exercise_stand_in_the_folder_and_are_sound()
    {
        ClassKitRun.Of("begin", "--out", Mine).Done();

        ClassKitRun.Of("begin", "--only", "lesson", "--out", Path.Combine(Mine, "lessons", "steamed-buns")).Done();
        ClassKitRun.Of("begin", "--only", "class", "--out", Path.Combine(Mine, "evening")).Done();
        ClassKitRun.Of("begin", "--only", "exercise", "--out", Path.Combine(Mine, "more", "exercises")).Done();

        var check = ClassKitRun.Of("check", Mine, "--fine").Done().Output;
        Assert.Contains("milk-scones: fine", check, StringComparison.Ordinal);
        Assert.Contains("Give the copy a title of its own", check, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lesson_is_handed_over_and_received_elsewhere_and_nothing_there_is_replaced()
    {
        ClassKitRun.Of("begin", "--out", Mine).Done();

        var over = ClassKitRun.Of("hand-over", Path.Combine(Mine, "lessons", "milk-scones"), "--out", _folder.Of("over")).Done();
        Assert.Contains("roster.csv", over.Output[over.Output.IndexOf("Not in it", StringComparison.Ordinal)..], StringComparison.Ordinal);
        var received = ClassKitRun.Of("receive", _folder.Of("over/milk-scones.zip"), "--out", _folder.Of("theirs")).Done();
        Assert.EndsWith("no problem found.", received.Output.Trim(), StringComparison.Ordinal);
        Assert.Equal(
            File.ReadAllText(Path.Combine(Mine, "lessons", "milk-scones", "lesson.md")),
            File.ReadAllText(_folder.Of("theirs/lessons/milk-scones/lesson.md"))
        );
        Assert.Contains(
            "There is something in this folder already",
            ClassKitRun.Of("receive", _folder.Of("over/milk-scones.zip"), "--out", _folder.Of("theirs")).Problems,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_somebody_has_written_is_never_replaced()
    {
        ClassKitRun.Of("begin", "--out", Mine).Done();
        File.AppendAllText(Path.Combine(Mine, "class.md"), "\nMy own words.\n");

        var again = ClassKitRun.Of("begin", "--out", Mine);

        Assert.Equal(1, again.ExitCode);
        Assert.Contains("There is something in this folder already", again.Problems, StringComparison.Ordinal);
        Assert.EndsWith("My own words.\n", File.ReadAllText(Path.Combine(Mine, "class.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lesson_without_exercises_makes_a_pack_and_a_lesson_alone_says_which_links_broke()
    {
        ClassKitRun.Of("begin", "--out", Mine).Done();
        var lesson = Path.Combine(Mine, "lessons", "milk-scones");
        var text = File.ReadAllText(Path.Combine(lesson, "lesson.md"));
        File.WriteAllText(
            Path.Combine(lesson, "lesson.md"),
            text[..text.IndexOf("## Exercises", StringComparison.Ordinal)] + text[text.IndexOf("## Vocabulary", StringComparison.Ordinal)..]
        );

        ClassKitRun.Of("pack", lesson, "--class", Path.Combine(Mine, "class.md"), "--out", _folder.Of("pack")).Done();
        Assert.Contains(
            "There is no exercise to deal",
            ClassKitRun.Of("deal", lesson, "--roster", Path.Combine(Mine, "roster.csv"), "--out", _folder.Of("dealt")).Problems,
            StringComparison.Ordinal
        );

        ClassKitRun.Of("begin", "--only", "lesson", "--out", _folder.Of("alone")).Done();
        Assert.Contains("There is no file", ClassKitRun.Of("check", _folder.Of("alone")).Problems, StringComparison.Ordinal);
    }
}
