using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Stations;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Stations;

/// <summary>Two breads whose times are set by hand, so that what is in use at once can be counted by hand.</summary>
public sealed class StationTests
{
    private static readonly EquipmentKind Burner = EquipmentKind.Find("burner")!;

    private static readonly Lesson Lesson = SampleLesson.Of(
        SampleLesson.Buns with
        {
            Equipment = [new("Tin", 1, false), new("Bowl", 1, false), new("Scale", 1, true)],
        },
        SampleLesson.Muffins with
        {
            Equipment = [new("tin", 1, false), new("Bowl", 2, false), new("Scale", 1, true), new("Sifter", 1, true)],
        }
    );

    [Fact]
    public void Without_a_plan_each_bread_has_its_own_and_what_is_shared_is_there_once()
    {
        var tools = TeamStation.Of(Lesson, null).ToDictionary(tool => tool.Name, tool => tool.Count);
        Assert.Equal(
            new()
            {
                ["Tin"] = 2,
                ["Bowl"] = 3,
                ["Scale"] = 1,
                ["Sifter"] = 1,
            },
            tools
        );
    }

    [Fact]
    public void Breads_that_follow_each_other_share_a_tin_and_breads_at_once_do_not()
    {
        Assert.Equal(2, Tins(Plan(muffinsFrom: 20)));
        Assert.Equal(1, Tins(Plan(muffinsFrom: 30)));
        Assert.Equal(2, TeamStation.Of(Lesson, Plan(muffinsFrom: 30)).Single(tool => tool.Name == "Bowl").Count);

        static int Tins(BenchPlan plan) => TeamStation.Of(Lesson, plan).Single(tool => tool.Name == "Tin").Count;
    }

    [Fact]
    public void Burners_are_counted_when_most_are_in_use()
    {
        // Both teams warm milk from 0 to 10 on a burner each; at 20 or 30 the muffins take another, one a team.
        var shared = Assert.Single(SharedPlaces.Of(Plan(muffinsFrom: 5)));
        Assert.Equal((Burner, 4, 5, 10, (int?)3), (shared.Kind, shared.AtOnce, shared.From, shared.To, shared.InKitchen));
        var later = Assert.Single(SharedPlaces.Of(Plan(muffinsFrom: 20)));
        Assert.Equal((2, 0, 10), (later.AtOnce, later.From, later.To));
    }

    /// <summary>Two teams in one shift: buns 0 to 30 (a burner until 10), muffins for 25 minutes (a burner for the first 5).</summary>
    private static BenchPlan Plan(int muffinsFrom)
    {
        BenchStep OnBurner(string name, int minutes) => new(name, minutes, minutes) { Uses = [new(Burner, 1)] };
        var bench = new BenchClass(
            new(100, 0, 0, 0),
            2,
            2,
            [new(Burner, 3)],
            new(1, 4, 0, OvenBank.UsualWarming, OvenBank.UsualCooling),
            [
                new("buns", "buns", [OnBurner("Warm", 10), new("Rise", 20, 20)]),
                new("muffins", "muffins", [OnBurner("Melt", 5), new("Mix", 20, 20)]),
            ],
            []
        );
        return new(
            bench,
            Shift.Of(2, 1),
            [
                .. bench.Loads.SelectMany(load =>
                    load.Bread == 0
                        ? new PlannedStep[] { new(load, 0, 0, 10, null), new(load, 1, 10, 30, null) }
                        : [new(load, 0, muffinsFrom, muffinsFrom + 5, null), new(load, 1, muffinsFrom + 5, muffinsFrom + 25, null)]
                ),
            ],
            []
        );
    }
}
