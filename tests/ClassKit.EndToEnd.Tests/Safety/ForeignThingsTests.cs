using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Safety;

/// <summary>
/// Every command that writes, twice, with what is not ours around and inside its folder: same inode, link, mode and times before and after.
/// </summary>
public sealed class ForeignThingsTests(TourRun tour) : IDisposable
{
    private static readonly string Lesson = Checkout.Demo.Lesson;
    private static readonly string Roster = Checkout.Demo.Roster;

    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("around", "out");

    private string Dealt => _folder.Of("dealt");

    private string Graded => _folder.Of("graded");

    public void Dispose()
    {
        if (OperatingSystem.IsLinux())
            System.Diagnostics.Process.Start("chmod", ["-R", "u+rwX", _folder.Path]).WaitForExit();
        _folder.Dispose();
    }

    [Fact]
    public void Every_command_that_writes_a_folder_is_tried_here()
    {
        var tried = typeof(ForeignThingsTests)
            .GetMethods()
            .Where(method => method.IsDefined(typeof(FactAttribute), inherit: false))
            .Select(method => method.Name)
            .ToHashSet();
        // Receive writes only into a folder in which nothing is, and grading is tried with what follows it.
        Assert.DoesNotContain(CommandNames.Writing.Except(["receive", "grade"]), name =>
            !tried.Contains(char.ToUpperInvariant(name[0]) + name[1..].Replace('-', '_'))
        );
        Assert.Contains(nameof(Grade_and_regrade), tried);
    }

    [Fact]
    public void Tour() => Twice(["tour", "--out", Out], ["tour", "--out", Out]);

    [Fact]
    public void Begin()
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("Inodes, pipes and modes are looked at with Linux's find.");
        InstructorsThings.Put(_folder.Of("around"));
        Again("begin", "--only", "exercise", "--out", Out);
    }

    [Fact]
    public void Hand_over() =>
        Twice(
            ["hand-over", Lesson, "--out", Out],
            ["hand-over", Lesson, "--out", Out, "--prices", Path.Combine(Checkout.Demo.Root, "demo-cohort", "prices.md")]
        );

    [Fact]
    public void Pack() => Twice(["pack", Lesson, "--out", Out], ["pack", Lesson, "--out", Out, "--class", Checkout.Demo.Class]);

    [Fact]
    public void Deal() => Twice(["deal", Lesson, "--roster", Roster, "--out", Out], ["deal", Lesson, "--roster", Roster, "--out", Out]);

    [Fact]
    public void Practice() =>
        Twice(["practice", Lesson, "--roster", Roster, "--out", Out], ["practice", Lesson, "--out", Out, "--seed", "2"]);

    [Fact]
    public void Rehearse() =>
        Twice(["rehearse", Lesson, "--students", "4", "--out", Out], ["rehearse", Lesson, "--students", "3", "--out", Out, "--seed", "2"]);

    [Fact]
    public void Learn()
    {
        var proposals = _folder.Of("proposals.md");
        File.WriteAllText(proposals, "## hydration: milk\n### Misconception: added\n\n`=flour+milk_percent`\n\nYou added. Multiply.\n");
        string[] command = ["learn", proposals, Path.Combine(Lesson, "exercises", "hydration.md"), "--out", Out];
        Twice(command, command);
    }

    [Fact]
    public void Item_bank() =>
        Twice(["item-bank", Lesson, "--variants", "2", "--out", Out], ["item-bank", Lesson, "--variants", "3", "--out", Out]);

    [Fact]
    public void Weigh()
    {
        var term = Path.Combine(Checkout.Demo.Root, "demo-cohort", "term", "term.md");
        Twice(["weigh", term, "--out", Out], ["weigh", term, "--out", Out]);
    }

    [Fact]
    public void Observe() => Twice(["observe", Lesson, "--out", Out], ["observe", Lesson, "--out", Out, "--class", Checkout.Demo.Class]);

    [Fact]
    public void Observed()
    {
        var returned = Directory.CreateDirectory(_folder.Of("returned")).FullName;
        Twice(["observed", Lesson, "--returned", returned, "--out", Out], ["observed", Lesson, "--returned", returned, "--out", Out]);
    }

    [Fact]
    public void Bench()
    {
        string[] bench =
        [
            "bench",
            Path.Combine(Checkout.Demo.Root, "rubrics", "bench-work.md"),
            "--class",
            Checkout.Demo.Class,
            "--roster",
            Roster,
            "--out",
            Out,
        ];
        Twice(bench, bench);
    }

    [Fact]
    public void Compare()
    {
        var term = Path.Combine(Checkout.Demo.Root, "demo-cohort", "term");
        string[] compare =
        [
            "compare",
            Path.Combine(Checkout.Demo.Root, "rubrics", "bench-work.md"),
            "--class",
            Checkout.Demo.Class,
            "--roster",
            Roster,
            "--first",
            Path.Combine(term, "bench-day-one.csv"),
            "--second",
            Path.Combine(term, "bench-day-one-second.csv"),
            "--out",
            Out,
        ];
        Twice(compare, compare);
        Assert.Contains(
            "First: bench-day-one. Second: bench-day-one-second.",
            File.ReadAllText(Path.Combine(Out, "marking-agreement.html")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Skills()
    {
        CopyOfTour();
        Twice(["skills", Graded, "--out", Out], ["skills", Graded, "--wanted", "2027-06-01", "--out", Out]);
    }

    [Fact]
    public void Difficulty()
    {
        CopyOfTour();
        Twice(
            ["difficulty", Lesson, "--graded", Graded, "--out", Out],
            ["difficulty", Lesson, "--graded", Graded, "--class", Checkout.Demo.Class, "--out", Out]
        );
    }

    [Fact]
    public void Paper()
    {
        CopyOfTour();
        Twice(["paper", Dealt, "--out", Out], ["paper", Dealt, "--out", Out]);
    }

    [Fact]
    public void Grade_and_regrade()
    {
        CopyOfTour();
        string[] grade = ["grade", Dealt, "--returned", Path.Combine(Dealt, "workbooks"), "--out", Out];
        Twice(grade, ["grade", Dealt, "--returned", Checkout.Demo.Returned, "--out", Out, "--drop"]);
        Again("regrade", Dealt, "--returned", Path.Combine(Dealt, "workbooks"), "--graded", Out, "--write");
    }

    [Fact]
    public void Grade_without_names()
    {
        CopyOfTour();
        string[] grade = ["grade", Dealt, "--returned", Path.Combine(Dealt, "workbooks"), "--out", Out, "--pseudonymous"];
        Twice(grade, ["grade", Dealt, "--returned", Checkout.Demo.Returned, "--out", Out, "--pseudonymous", "--drop"]);
    }

    [Fact]
    public void Follow_up()
    {
        CopyOfTour();
        string[] followUp = ["follow-up", Dealt, "--graded", Graded, "--out", Out];

        // With another seed it would be another deal, which is refused.
        Twice(followUp, followUp);
    }

    [Fact]
    public void Grade_exchange()
    {
        CopyOfTour();
        string[] exchange =
        [
            "grade-exchange",
            Dealt,
            "--graded",
            Graded,
            "--out",
            Out,
            "--school",
            "s",
            "--session",
            "t",
            "--category",
            "c",
            "--assigned",
            "2026-11-01",
            "--due",
            "2026-11-08",
            "--scored",
            "2026-11-10",
        ];
        Twice([.. exchange, "--class", "a"], [.. exchange, "--class", "b"]);
    }

    [Fact]
    public void Term_exchange()
    {
        string[] exchange =
        [
            "term-exchange",
            Term,
            "--school",
            "s",
            "--course",
            "k",
            "--class",
            "c",
            "--session",
            "t",
            "--begins",
            "2026-09-01",
            "--out",
            Out,
        ];
        Twice([.. exchange, "--ends", "2026-12-18"], [.. exchange, "--ends", "2026-12-17"]);
    }

    [Fact]
    public void Show()
    {
        Entered();
        string[] show = ["show", "amara-osei", "--record", Record, "--out", Out];
        Twice(show, show);
    }

    [Fact]
    public void Write_out()
    {
        Entered();
        string[] write = ["write-out", Record, "--out", Out];
        Twice(write, write);
    }

    private static string Term => Path.Combine(Checkout.Demo.Root, "demo-cohort", "term", "term.md");

    private string Record => _folder.Of("teaching");

    private void Entered()
    {
        Directory.CreateDirectory(Record);
        ClassKitRun.Of("enter", Term, "--record", Record, "--by", "Kim").Done();
    }

    private void CopyOfTour()
    {
        FolderContent.Copy(Path.Combine(tour.Folder, "dealt"), Dealt);
        FolderContent.Copy(Path.Combine(tour.Folder, "graded"), Graded);
    }

    private void Twice(string[] first, string[] second)
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("Inodes, pipes and modes are looked at with Linux's find.");
        InstructorsThings.Put(_folder.Of("around"));
        var around = InstructorsThings.Snapshot(_folder.Path);
        ClassKitRun.Of(first).Done();
        Assert.Equal(around, InstructorsThings.Snapshot(_folder.Path));

        foreach (var folder in Directory.EnumerateDirectories(Out, "*", SearchOption.AllDirectories).Append(Out).ToList())
            InstructorsThings.Put(folder);
        Again(second);
    }

    private void Again(params string[] arguments)
    {
        var before = InstructorsThings.Snapshot(_folder.Path);
        Assert.NotEmpty(before);

        ClassKitRun.Of(arguments).Done();

        Assert.Equal(before, InstructorsThings.Snapshot(_folder.Path));
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Of("around"), ".*.classkit-*"));
    }
}
