using ClassKit.Desk.Folders;
using ClassKit.Desk.Tests.Tools;
using ClassKit.Desk.Week;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.Desk.Tests.Week;

/// <summary>Of several rounds the one that is due first is what the first page leads to, and nobody is asked for work before it is due.</summary>
public sealed class NextStepTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private static readonly DateTimeOffset Now = RunningDesk.Now;

    [Fact]
    public void The_round_that_is_due_first_is_decided_on_first()
    {
        var next = Next([
            Marked("02", "Cheese Scones", Now.AddDays(7)) with
            {
                NotCounted = 1,
            },
            Marked("01", "Practice", Now) with
            {
                NotCounted = 4,
            },
        ]);

        Assert.Equal(new NextStep("Decide on 4 things of Practice", $"rounds/{Known.Key}/01/decisions"), next);
    }

    [Fact]
    public void What_is_due_on_no_day_does_not_come_before_decisions()
    {
        var open = new RoundState(Round("03"), Dealt("Follow-up", null), null, HasFiles: false);

        Assert.Equal("Decide on 1 thing of Practice", Next([open, Marked("01", "Practice", Now) with { NotCounted = 1 }]).Words);
        Assert.Equal("Take in what comes back of Follow-up", Next([open, Marked("01", "Practice", Now)]).Words);
    }

    [Fact]
    public void Nobody_is_asked_for_work_before_it_is_due()
    {
        Assert.Equal("Ask 1 student for their work", Next([Missing(Now.AddMinutes(-1))]).Words);
        Assert.Equal("Prepare the next lesson", Next([Missing(Now.AddMinutes(1))]).Words);
        Assert.Equal("Prepare the next lesson", Next([Missing(null)]).Words);
    }

    /// <summary>Work that is missing does not fall out of sight when the next round is handed out: the one due first comes first.</summary>
    [Fact]
    public void Missing_work_of_every_round_is_asked_for_the_earliest_due_first()
    {
        var earlier = Missing(Now.AddDays(-9), "01", "Practice");
        var later = Missing(Now.AddDays(-2), "02", "Cheese Scones");
        var newest = Marked("03", "Rolls", Now.AddDays(5));

        Assert.Equal(
            new NextStep("Ask 1 student for their work of Practice", $"rounds/{Known.Key}/01/returns"),
            Next([newest, later, earlier])
        );
        Assert.Equal("Ask 1 student for their work of Cheese Scones", Next([newest, later]).Words);
        var excused = earlier with { Away = new Dictionary<string, string> { ["ana"] = "excused" } };
        Assert.Equal("Ask 1 student for their work of Cheese Scones", Next([newest, later, excused]).Words);
    }

    private ClassEntry Known => desk.Folder.Classes()[0];

    private NextStep Next(IReadOnlyList<RoundState> rounds) => NextStep.Of(Known, rounds, Now);

    private Round Round(string name) => new(Known.Key, Path.Combine(desk.Folder.Root, "rounds", Known.Key, name));

    private static DealtClass Dealt(string title, DateTimeOffset? due) =>
        new("", title, "", 0, new("", "", 0, 0, 0, 0), [], []) { Due = due is { } at ? new(at, ClassTimeZone.Utc) : null };

    private RoundState Marked(string name, string title, DateTimeOffset due)
    {
        var dealt = Dealt(title, due);
        return new(Round(name), dealt, new(dealt, [], []), HasFiles: true);
    }

    private RoundState Missing(DateTimeOffset? due, string name = "01", string title = "Practice")
    {
        var dealt = Dealt(title, due);
        return new(Round(name), dealt, new(dealt, [new(new("ana", "Ana Díaz"), GradeStatus.Missing, null, [], [])], []), HasFiles: true);
    }
}
