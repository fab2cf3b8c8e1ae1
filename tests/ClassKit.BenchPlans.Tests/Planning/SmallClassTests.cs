using ClassKit.Baking.Cooking;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Tests.Checking;
using ClassKit.BenchSolver;

namespace ClassKit.BenchPlans.Tests.Planning;

/// <summary>Classes so small that every plan can be tried.</summary>
public sealed class SmallClassTests
{
    private static readonly BenchBread Flat = new(
        "flat",
        "Flat",
        [Bakery.Hands("Roll", 1, 2) with { Wait = new(0, 3) }, Bakery.Hands("Griddle", 2, 3) with { Uses = [new(Bakery.Griddle, 1)] }]
    );
    private static readonly BenchBread Cool = new(
        "cool",
        "Cool",
        [Bakery.Hands("Shape", 1, 2) with { Wait = new(0, 2) }, Bakery.Baked("Bake", 3, 4, 180)]
    );
    private static readonly BenchBread Hot = new(
        "hot",
        "Hot",
        [Bakery.Hands("Shape", 1, 1) with { Wait = new(1, 3) }, Bakery.Baked("Bake", 2, 2, 200)]
    );
    private static readonly BenchBread Shut = new(
        "shut",
        "Shut",
        [Bakery.Hands("Fill", 1, 2) with { Wait = new(0, 2) }, Bakery.Baked("Bake", 3, 4, 200, shut: true)]
    );

    private static readonly BenchBread Turned = new("turned", "Turned", [Bakery.Baked("Bake", 2, 2, 200), Bakery.Baked("Dry", 1, 3, 160)]);
    private static readonly BenchBread Weighed = new(
        "weighed",
        "Weighed",
        [
            Bakery.Hands("Weigh", 1, 2) with
            {
                Wait = new(0, 3),
                Uses = [new(EquipmentKind.Scale, 1)],
            },
            Bakery.Alone("Temper", 2, 3),
            Bakery.Hands("Mix", 1, 2),
        ]
    );
    private static readonly BenchBread Steamed = new(
        "steamed",
        "Steamed",
        [
            Bakery.Hands("Shape", 1, 2) with
            {
                Wait = new(0, 2),
            },
            Bakery.Alone("Steam", 3, 4) with
            {
                Uses = [new(EquipmentKind.Steamer, 1)],
                IsPutIn = true,
            },
        ]
    );
    private static readonly BenchBread Wheaten = Fried("wheaten", 2);
    private static readonly BenchBread Wheatless = Fried("wheatless", 1);

    private static readonly BenchBread Shown = new("shown", "Shown", [Bakery.Baked("Bake", 3, 3, 200)])
    {
        LeftToInstructor = true,
        IsForShow = true,
    };

    private static readonly BenchBread Twice = new(
        "twice",
        "Twice",
        [Bakery.Baked("Bake", 2, 2, 200), Bakery.Alone("Cool", 1, 2) with { Wait = WaitWindow.None }, Bakery.Baked("Reheat", 1, 1, 190)]
    )
    {
        KeepsMinutes = 6,
    };
    private static readonly BenchBread ParBaked = new(
        "par-baked",
        "Par-baked",
        [Bakery.Baked("Par-bake", 2, 2, 200) with { Wait = new(2, 3) }, Bakery.Baked("Finish", 1, 1, 190)]
    );
    private static readonly BenchBread Stood = Cool with
    {
        Id = "stood",
        Name = "Stood",
        VariantOf = "cool",
        Steps = [Bakery.Alone("Stand", 1, 1), .. Cool.Steps],
    };

    public static TheoryData<string> Names => [.. Classes.Keys];

    private static Dictionary<string, BenchClass> Classes { get; } =
        new()
        {
            ["two teams, one griddle"] = Class(10, 2, Bakery.Ovens(0, 1), [Flat], 1),
            ["two teams, two griddles"] = Class(10, 2, Bakery.Ovens(0, 1), [Flat], 2),
            ["a wait between two bakes, and its place for another meanwhile"] = Class(12, 1, Bakery.Ovens(1, 1), [ParBaked, Hot], 1),
            ["a wait between two bakes that leaves no time"] = Class(4, 1, Bakery.Ovens(1, 1), [ParBaked], 1),
            ["two breads, one person"] = Class(12, 1, Bakery.Ovens(1, 1), [Flat, Cool], 1, people: 1),
            ["two temperatures, one oven"] = Class(16, 1, Bakery.Ovens(1, 2), [Cool, Hot], 1),
            ["two temperatures, two ovens"] = Class(12, 1, Bakery.Ovens(2, 1), [Cool, Hot], 1),
            ["two teams, one place"] = Class(13, 2, Bakery.Ovens(1, 1), [Cool], 1),
            ["two teams, two places"] = Class(12, 2, Bakery.Ovens(1, 2), [Cool], 1),
            ["a door that stays shut"] = Class(12, 2, Bakery.Ovens(1, 2), [Shut], 1),
            ["a door that stays shut beside the same heat"] = Class(14, 1, Bakery.Ovens(1, 2), [Shut, Hot], 1),
            ["an oven that heats up"] = Class(12, 1, Bakery.Ovens(1, 1, heatUp: 5), [Cool, Flat], 1, people: 1),
            ["two teams, one steamer place"] = Class(14, 2, Bakery.Ovens(0, 1), [Steamed], 1) with
            {
                Equipment = [new(EquipmentKind.Steamer, 1)],
            },
            ["a steamer that heats up"] = Class(11, 2, Bakery.Ovens(0, 1), [Steamed], 1) with
            {
                Equipment = [new(EquipmentKind.Steamer, 2) { HeatUpMinutes = 6 }],
            },
            ["a steamer that is hot too late"] = Class(9, 1, Bakery.Ovens(0, 1), [Steamed], 1) with
            {
                Equipment = [new(EquipmentKind.Steamer, 1) { HeatUpMinutes = 7 }],
            },
            ["a demonstration at a steamer that heats up"] = Class(12, 1, Bakery.Ovens(0, 1), [Steamed], 1) with
            {
                Equipment = [new(EquipmentKind.Steamer, 1) { HeatUpMinutes = 3 }],
                Demonstrations = [new("Steam", 1, new(0, 1)) { Uses = [new(EquipmentKind.Steamer, 1)] }],
            },
            ["one fat for all, and one bread first in it"] = Class(9, 2, Bakery.Ovens(0, 1), [Wheatless, Wheaten], 1) with
            {
                Equipment = [new(EquipmentKind.Fryer, 1)],
                CookedFirst = [new(0, 1, CookingWay.Fryer)],
            },
            ["a fat for each, and the longer bread first in it"] = Class(8, 2, Bakery.Ovens(0, 1), [Wheatless, Wheaten], 1) with
            {
                Equipment = [new(EquipmentKind.Fryer, 2)],
                CookedFirst = [new(1, 0, CookingWay.Fryer) { EachForItself = true }],
            },
            ["one fat, and no time to wait for it"] = Class(3, 2, Bakery.Ovens(0, 1), [Wheatless, Wheaten], 1) with
            {
                Equipment = [new(EquipmentKind.Fryer, 2)],
                CookedFirst = [new(0, 1, CookingWay.Fryer)],
            },
            ["a steamer and a demonstration"] = Class(10, 1, Bakery.Ovens(0, 1), [Steamed, Weighed], 1) with
            {
                Equipment = [new(EquipmentKind.Steamer, 1)],
                Demonstrations = [new("Lifting the lid", 2, null)],
            },
            ["a bread that keeps a minute"] = Class(13, 2, Bakery.Ovens(1, 1), [Cool with { KeepsMinutes = 4 }], 1),
            ["too little time"] = Class(6, 2, Bakery.Ovens(1, 1), [Cool], 1),
            ["an oven that is not down yet when the next bread wants it"] = Class(
                15,
                1,
                Bakery.Ovens(1, 1),
                [Turned, Cool with { KeepsMinutes = 0 }],
                1
            ),
            ["an oven that is not down yet when the next bread wants it hotter"] = Class(
                13,
                1,
                Bakery.Ovens(1, 1),
                [Turned, Hot with { KeepsMinutes = 0 }],
                1
            ),
            ["two teams, one scale"] = Class(10, 2, Bakery.Ovens(0, 1), [Weighed], 1),
            ["what is out of the refrigerator a short time only"] = Class(
                9,
                1,
                Bakery.Ovens(0, 1),
                [Weighed with { Steps = [Weighed.Steps[0] with { BakedWithinMinutes = 5 }, .. Weighed.Steps.Skip(1)] }],
                1
            ),
            ["a demonstration that needs the scale"] = Class(10, 1, Bakery.Ovens(0, 1), [Weighed], 1) with
            {
                Demonstrations = [new("Taring", 1, new(0, 1)) { Uses = [new(EquipmentKind.Scale, 1)] }],
            },
            ["a demonstration of what came out of the oven"] = Class(
                12,
                1,
                Bakery.Ovens(1, 1),
                [Cool with { Steps = [.. Cool.Steps, Bakery.Hands("Pierce", 1, 1)] }],
                1
            ) with
            {
                Demonstrations = [new("Piercing", 1, new(0, 2)) { After = new(0, 1) }],
            },
            ["a demonstration that bakes"] = Class(12, 1, Bakery.Ovens(1, 2), [Cool, Shown], 1) with
            {
                Demonstrations = [new("Filling", 1, new(0, 1)) { Load = 1 }],
            },
            ["a demonstration that bakes where the door stays shut"] = Class(12, 1, Bakery.Ovens(1, 2), [Shut, Shown], 1) with
            {
                Demonstrations = [new("Filling", 1, null) { Load = 1 }],
            },
            ["a series in one oven"] = Class(9, 1, Bakery.Ovens(1, 2), [Cool, Stood], 1),
            ["a series that needs two ovens or twice the time"] = Class(13, 1, Bakery.Ovens(2, 1), [Cool, Stood], 1),
            ["a series for one pair of hands"] = Class(10, 1, Bakery.Ovens(2, 1), [Cool, Stood], 1, people: 1),
            ["a bread that is baked, cools and is heated again"] = Class(10, 2, Bakery.Ovens(1, 1), [Twice], 1),
            ["another bread while one cools between two bakes"] = Class(
                14,
                1,
                Bakery.Ovens(1, 1),
                [Twice, Hot with { KeepsMinutes = 9 }],
                1
            ),
            ["two bakes in two ovens"] = Class(9, 1, Bakery.Ovens(2, 1), [Twice, Cool], 1),
            ["two bakes behind a shut door"] = Class(
                10,
                2,
                Bakery.Ovens(1, 2),
                [
                    Twice with
                    {
                        Steps =
                        [
                            .. Twice.Steps.Select(step =>
                                step.Oven is { } oven ? step with { Oven = oven with { DoorShut = true } } : step
                            ),
                        ],
                    },
                ],
                1
            ),
            ["two breads that may not stand"] = Class(
                12,
                1,
                Bakery.Ovens(1, 1),
                [Cool with { KeepsMinutes = 0 }, Hot with { KeepsMinutes = 0 }],
                1
            ),
        };

    [Theory]
    [MemberData(nameof(Names))]
    public void The_best_of_all_plans_is_found(string name)
    {
        var bench = Classes[name];
        var answer = new CpSatSolver().Solve(new(bench, PlanGoal.Best, bench.Teams, 1));
        var lowest = AllPlans.LowestCost(bench, PlanWeights.Default);

        Assert.Equal(lowest is null ? SolverVerdict.Impossible : SolverVerdict.Solved, answer.Verdict);
        if (lowest is null)
            return;
        Assert.Empty(PlanChecker.Faults(bench, answer.Plan!));
        Assert.Equal(lowest, PlanCost.Of(answer.Plan!).Weighed(PlanWeights.Default));
        Assert.Equal((double)lowest, answer.Bound);
    }

    [Fact]
    public void The_soonest_tasting_is_the_shortest_class()
    {
        // Two teams, one oven of one place: shape 1, bake 3, bake 3 after that.
        var answer = new CpSatSolver().Solve(new(Class(60, 2, Bakery.Ovens(1, 1), [Cool], 1), PlanGoal.Shortest, 2, 1));

        Assert.Equal(7, answer.Plan!.Class.Time.ReadyBy);
    }

    private static BenchBread Fried(string id, int minutes) =>
        new(
            id,
            id,
            [
                Bakery.Hands("Spoon", 1, 1) with
                {
                    Wait = new(0, 2),
                },
                Bakery.Hands("Fry", minutes, minutes) with
                {
                    Uses = [new(EquipmentKind.Fryer, 1)],
                    Way = CookingWay.Fryer,
                },
            ]
        );

    private static BenchClass Class(int minutes, int teams, OvenBank ovens, BenchBread[] breads, int griddles, int people = 2) =>
        new(
            new(minutes, 0, 0, 0),
            teams,
            people,
            [new(Bakery.Griddle, griddles), new(EquipmentKind.Scale, 1)],
            ovens with
            {
                WarmingPerMinute = TemperatureDifference.FromKelvins(10),
                CoolingPerMinute = TemperatureDifference.FromKelvins(10),
            },
            breads,
            []
        );
}
