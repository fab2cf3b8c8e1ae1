using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Tests.Checking;

namespace ClassKit.BenchPlans.Tests.Planning;

/// <summary>Breads that are held against each other are treated alike, or it is said in what they are not.</summary>
public sealed class SeriesTests
{
    /// <summary>
    /// Muffins as written by teams 1 and 5, with nothing that lifts by 2, with old powder by 3, and held for 40 min before they are filled
    /// by 4.
    /// </summary>
    private static BenchClass Series(int ovens, int places, int period = 150) =>
        new(
            new(period, 10, 20, 15),
            5,
            2,
            [new(EquipmentKind.Scale, 5)],
            Bakery.Ovens(ovens, places, heatUp: 30),
            [Muffins("written", [1, 5]), Muffins("none", [2]), Muffins("old", [3]), Muffins("held", [4], held: 40)],
            []
        );

    private static BenchBread Muffins(string id, int[] teams, int? held = null) =>
        new(
            id,
            id,
            [
                Bakery.Hands("Weigh", 5, 7) with
                {
                    Uses = [new(EquipmentKind.Scale, 1)],
                },
                Bakery.Hands("Mix", 1, 2),
                .. held is { } minutes
                    ? [Bakery.Alone("Hold", minutes, minutes) with { Wait = WaitWindow.None }]
                    : Array.Empty<BenchStep>(),
                Bakery.Hands("Fill", 3, 3),
                Bakery.Baked("Bake", 20, 22, 200),
                Bakery.Alone("Cool", 10, 15),
            ]
        )
        {
            Teams = teams,
            VariantOf = id == "written" ? null : "written",
        };

    public static TheoryData<string> Ways => ["solver", "rule of thumb"];

    [Theory]
    [MemberData(nameof(Ways))]
    public void Members_of_a_series_share_oven_minute_and_lengths_where_they_can(string by)
    {
        var plan = Planned(Series(ovens: 2, places: 6), by);

        Assert.Empty(SeriesDifferences.In(plan));
        Assert.Equal(0, PlanCost.Of(plan).UnlikeMinutes);
        Assert.Single(plan.Steps.Select(step => step.Oven).OfType<int>().Distinct());
        Assert.Single(plan.Steps.Where(step => step.Oven is not null).Select(step => (step.Start, step.End)).Distinct());
        Assert.Single(plan.Steps.GroupBy(step => step.Load).Select(load => load.Last().End).Distinct());
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Where_no_oven_holds_them_all_they_go_into_two_in_one_minute(string by)
    {
        var difference = Assert.IsType<SeriesDifference.Ovens>(
            Assert.Single(SeriesDifferences.In(Planned(Series(ovens: 2, places: 3), by)))
        );

        Assert.Equal(0, difference.AsWritten);
        Assert.Equal([0, 1, 2, 3], difference.Members.Select(member => member.Bread));
        Assert.Equal([1, 2], difference.Members.SelectMany(member => member.Ovens).Distinct().Order());
        Assert.Equal(15, difference.Minutes);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Where_one_oven_is_too_small_it_is_said_who_goes_in_when(string by)
    {
        var plan = Planned(Series(ovens: 1, places: 3), by);
        var differences = SeriesDifferences.In(plan);

        var begins = Assert.Single(differences.OfType<SeriesDifference.Beginnings>());
        Assert.Equal("Bake", begins.Step);
        Assert.All(begins.Times, time =>
            Assert.Equal(
                time.Least,
                plan.Steps.Where(step => step.Load.Bread == time.Bread && step.Oven is not null).Min(step => step.Start)
            )
        );
        Assert.InRange(begins.Minutes, 20, 25);
        Assert.DoesNotContain(differences, difference => difference is SeriesDifference.Lengths);
    }

    [Fact]
    public void What_a_series_changes_is_no_difference()
    {
        // Proofed for 8 to 10 min or for 80 to 90: the rise itself is not held against the other, all else is.
        BenchBread Rolls(string id, int least, int most) =>
            new(id, id, [Bakery.Hands("Shape", 5, 8), Bakery.Alone("Rise", least, most), Bakery.Baked("Bake", 15, 18, 210)])
            {
                VariantOf = id == "rolls" ? null : "rolls",
                Teams = [id == "rolls" ? 1 : 2],
            };
        var bench = new BenchClass(new(150, 0, 0, 0), 2, 2, [], Bakery.Ovens(1, 2), [Rolls("rolls", 8, 10), Rolls("over", 80, 90)], []);

        Assert.Equal(
            ["Shape", "Bake"],
            Assert.Single(BenchSeries.Of(bench)).AlikeSteps(bench).Select(group => bench.Breads[0].Steps[group[0].Step].Name)
        );
        Assert.Empty(SeriesDifferences.In(Planned(bench, "solver")));
        Assert.Empty(SeriesDifferences.In(Planned(bench, "rule of thumb")));
    }

    [Fact]
    public void Breads_of_their_own_are_no_series() => Assert.Empty(BenchSeries.Of(Bakery.Full()));

    private static BenchPlan Planned(BenchClass bench, string by)
    {
        var plan = (by == "solver" ? Planners.Usual : Planners.ByRule).Plan(bench).Plan!;
        Assert.Empty(PlanChecker.Faults(bench, plan));
        return plan;
    }
}
