using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;
using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Tests;
using ClassKit.Wording.Benches;

namespace ClassKit.Wording.Tests.Benches;

/// <summary>What planning found, in an instructor's words. The numbers are worked by hand beside each.</summary>
public sealed class PlanWordsTests
{
    private static readonly BenchBread Flat = new(
        "flat",
        "Flatbreads",
        [
            Bakery.Hands("Mix", 5, 6),
            Bakery.Alone("Rest", 10, 20) with
            {
                Wait = new(0, 60),
            },
            Bakery.Hands("Griddle", 12, 15) with
            {
                Uses = [new(Bakery.Griddle, 1)],
            },
        ]
    );

    /// <summary>Six teams on one griddle need 6 × 12 = 72 min of it; from the first step to the last 5 + 10 + 12 = 27 min.</summary>
    private static readonly BenchClass Griddles = Bakery.Simple(Flat, 60, teams: 6) with { Equipment = [new(Bakery.Griddle, 1)] };

    private static readonly BenchClass Full = Bakery.Full();

    [Fact]
    public void A_rule_is_said_with_the_numbers_that_make_it_tight()
    {
        Assert.Equal(
            "1 griddle: all loads together take at least 72 min of griddle time.",
            RuleWords.Of(new(RuleKind.Equipment, Equipment: Bakery.Griddle), Griddles)
        );
        Assert.Equal(
            "Time: of 60 min, 60 min are left between the beginning and the tasting. Flatbreads: at least 27 min from the first step to the last.",
            RuleWords.Of(new(RuleKind.Period), Griddles)
        );
    }

    [Fact]
    public void Every_rule_of_a_class_has_words() => Assert.All(PlanRule.Of(Full), rule => Assert.NotEmpty(RuleWords.Of(rule, Full)));

    public static TheoryData<PlanChange, string> Said =>
        new()
        {
            { new LongerPeriod(10), "Make the period 10 min longer: 160 min." },
            { new MoreOvens(1), "Add 1 oven: 4 in all." },
            { new MoreEquipment(Bakery.Burner, 2), "Add 2 burners: 8 burners in all." },
            { new LeaveToInstructor(1), "Leave the Popovers to the demonstration: the instructor makes one load for all." },
            {
                new DoAhead(0, 2),
                "Do the Buns the day before up to and with \"First rise\", keep it cold, and begin the class with \"Fill\"."
            },
            {
                new SeveralChanges([new LongerPeriod(10), new LongerPeriod(5)]),
                "Make the period 10 min longer: 160 min. And: Make the period 5 min longer: 165 min."
            },
            // 10 % more a degree (Sosland Publishing, Bake, "The science of fermentation"): 40 min at 28 °C are 40 / 1.1^4 = 27.3 min at 32
            // °C, planned as 28; 50 as 35, 25 as 18, 30 as 21.
            {
                new WarmTheRise(0, Temperature.FromCelsius(32), YeastGasModel.Default),
                "Let the Buns rise at 32 °C: First rise 28–35 min instead of 40–50, Second rise 18–21 min instead of 25–30."
            },
        };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_change_is_an_instruction_with_its_numbers(PlanChange change, string words) =>
        Assert.Equal(words, PlanChangeWords.Of(change, Full));

    [Fact]
    public void A_smaller_load_is_counted_in_places()
    {
        var bench = Bakery.Simple(new("loaf", "Loaves", [Bakery.Baked("Bake", 25, 30, 220, places: 2)]), 60);

        Assert.Equal(
            "Make fewer Loaves: 1 of 2 oven places a load, and as much less dough.",
            PlanChangeWords.Of(new SmallerLoads(0), bench)
        );
    }

    [Fact]
    public void Every_change_there_is_has_words() =>
        Assert.All(typeof(PlanChange).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(PlanChange))), type =>
            Assert.Contains((PlanChange[])[.. Said.Select(row => row.Data.Item1), new SmallerLoads(0)], change => change.GetType() == type)
        );

    [Fact]
    public void What_does_not_fit_is_said_with_by_how_much_and_because_of_what()
    {
        PlanRule[] rules =
        [
            new(RuleKind.People),
            new(RuleKind.Windows, 0),
            new(RuleKind.Equipment, Equipment: Bakery.Griddle),
            new(RuleKind.Period),
        ];

        Assert.Equal(
            "It is 27 min short. What stands in the way: Flatbreads: the dough may wait 65 min between its steps in all. 1 griddle: all loads together take at least 72 min of griddle time. ",
            PlanNoticeWords.Why(new(rules, true), 27, Griddles)
        );
        Assert.Equal(
            $"What stands in the way: {RuleWords.Of(rules[^1], Griddles)} ",
            PlanNoticeWords.Why(new([rules[^1]], true), null, Griddles)
        );
        Assert.Equal(
            "All of the lesson does not fit 60 min. It is 27 min short. Make the period 30 min longer: 90 min.",
            PlanNoticeWords.Of(new PeriodCut(new LongerPeriod(30), Griddles) { MissingMinutes = 27 })
        );
    }

    private static readonly BenchClass Compared = Full with
    {
        Breads = [Bakery.Muffins, Bakery.Muffins with { Name = "Muffins: old powder" }, Bakery.Muffins with { Name = "Muffins: none" }],
    };

    public static TheoryData<SeriesDifference, string> Unlike =>
        new()
        {
            {
                new SeriesDifference.Ovens(0, [new(0, [1, 2]), new(1, [1]), new(2, [2])]),
                "Not one oven bakes all: in oven 1 Muffins and Muffins: old powder; in oven 2 Muffins and Muffins: none."
            },
            {
                new SeriesDifference.Beginnings(0, "Bake", [new(0, 85, 85), new(1, 65, 65), new(2, 65, 85)]),
                "“Bake” begins at 1:05 for Muffins: old powder; 1:05 to 1:25 for Muffins: none; 1:25 for Muffins."
            },
            {
                new SeriesDifference.Lengths(0, "Bake", [new(0, 20, 20), new(1, 22, 22), new(2, 20, 20)]),
                "“Bake” takes 20 min for Muffins and Muffins: none; 22 min for Muffins: old powder."
            },
            {
                new SeriesDifference.Waits(0, "Fill", "Bake", [new(0, 0, 0), new(1, 2, 5)]),
                "Between “Fill” and “Bake” pass 0 min for Muffins; 2 to 5 min for Muffins: old powder."
            },
        };

    [Theory]
    [MemberData(nameof(Unlike))]
    public void What_is_not_alike_in_a_series_is_said_with_its_minutes_and_breads(SeriesDifference difference, string words) =>
        Assert.Equal(words, SeriesDifferenceWords.Of(difference, Compared));

    [Fact]
    public void Every_difference_there_is_has_words() =>
        Assert.Equal(typeof(SeriesDifference).GetNestedTypes().Order(ByName), Unlike.Select(row => row.Data.Item1.GetType()).Order(ByName));

    private static Comparer<Type> ByName { get; } = Comparer<Type>.Create((one, other) => string.CompareOrdinal(one.Name, other.Name));
}
