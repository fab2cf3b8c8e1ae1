using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Ovens;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.RuleOfThumb;
using ClassKit.BenchPlans.Tempering;

namespace ClassKit.BenchPlans.Tests.Checking;

/// <summary>The checker is what the plans are held against, so it is broken plans that it is held against.</summary>
public sealed class PlanCheckerTests
{
    private static readonly BenchClass Bench = Bakery.Full();
    private static readonly BenchPlan Sound = GreedyPlanner.Plan(Bench, 1)!;

    [Fact]
    public void A_sound_plan_has_no_fault() => Assert.Empty(PlanChecker.Faults(Bench, Sound));

    [Fact]
    public void A_missing_step_is_seen() => Broken(Sound with { Steps = [.. Sound.Steps.Skip(1)] }, "not every step");

    [Fact]
    public void A_missing_demonstration_is_seen() =>
        Broken(Sound with { Demonstrations = [.. Sound.Demonstrations.Skip(1)] }, "not those of the class");

    [Fact]
    public void Work_during_the_set_up_is_seen() => Broken(Moved(0, 0, -60), "begins during the set-up");

    [Fact]
    public void A_bread_that_comes_late_is_seen() => Broken(Moved(0, 0, 20), "not ready by the tasting");

    [Fact]
    public void A_rise_that_is_too_short_is_seen() =>
        Broken(Changed(0, 2, step => step with { End = step.End - 15 }), "does not take as long");

    [Fact]
    public void A_dough_that_waits_too_long_is_seen() =>
        Broken(Changed(2, 0, step => step with { Start = step.Start - 40, End = step.End - 40 }), "does not go on in time");

    [Fact]
    public void A_bread_that_changes_ovens_is_seen() =>
        Broken(Changed(1, 4, step => step with { Oven = step.Oven % 3 + 1 }), "does not go on in time");

    [Fact]
    public void An_oven_that_is_not_there_is_seen() => Broken(Changed(0, 5, step => step with { Oven = 9 }), "an oven that is not there");

    [Fact]
    public void Doughs_outside_the_oven_are_seen() => Broken(Changed(0, 5, step => step with { Oven = null }), "against the method");

    [Fact]
    public void Two_temperatures_in_one_oven_are_seen() =>
        Broken(
            Changed(0, 5, step => step with { Oven = Sound.Steps.First(other => other.Load.Bread == 2 && other.Oven is not null).Oven }),
            "two temperatures at once"
        );

    [Fact]
    public void A_door_opened_too_early_is_seen() => Broken(Moved(1, 0, -5, team: 2), "opened while it must stay shut");

    [Fact]
    public void A_demonstration_after_the_fact_is_seen() =>
        Broken(
            Sound with
            {
                Demonstrations = [Sound.Demonstrations[0] with { Start = 110 }, .. Sound.Demonstrations.Skip(1)],
            },
            "after somebody has begun"
        );

    [Fact]
    public void Hands_at_work_during_a_demonstration_are_seen()
    {
        var mixing = Sound.Steps.First(step => step.Load.Bread == 2 && step.Step == 0);
        Broken(
            Sound with
            {
                Demonstrations = [.. Sound.Demonstrations.Take(2), Sound.Demonstrations[2] with { Start = mixing.Start }],
            },
            "works during a demonstration"
        );
    }

    [Fact]
    public void Colliding_demonstrations_are_seen() =>
        Broken(Sound with { Demonstrations = [.. Sound.Demonstrations.Select(shown => shown with { Start = 10 })] }, "collide");

    [Fact]
    public void Too_little_equipment_is_seen() => Broken(Bench with { Equipment = [new(Bakery.Burner, 5)] }, "not enough burners");

    [Fact]
    public void Too_few_hands_are_seen() => Broken(Bench with { PeoplePerTeam = 1 }, "has too few hands");

    [Fact]
    public void An_overfull_oven_is_seen() => Broken(Bench with { Ovens = Bench.Ovens with { Places = 5 } }, "overfull");

    [Fact]
    public void A_cold_oven_is_seen() => Broken(Bench with { Ovens = Bench.Ovens with { HeatUpMinutes = 120 } }, "before it is hot");

    [Fact]
    public void A_bread_that_stands_too_long_is_seen()
    {
        var bench = Bench with { Breads = [Bakery.Buns, Bakery.Popovers with { KeepsMinutes = 3 }, Bakery.Muffins] };
        Assert.Contains(PlanChecker.Faults(bench, Moved(1, 0, -5)), fault => fault.Contains("stands too long", StringComparison.Ordinal));
    }

    [Fact]
    public void An_oven_that_cannot_change_its_heat_in_time_is_seen()
    {
        // 40 °C hotter at 10 °C a minute takes four minutes, and three are not enough.
        var cool = new BenchBread("cool", "Cool", [Bakery.Baked("Bake", 10, 10, 160)]);
        var hot = new BenchBread("hot", "Hot", [Bakery.Baked("Bake", 10, 10, 200)]);
        var bench = new BenchClass(new(40, 0, 0, 0), 1, 1, [], Bakery.Ovens(1, 1), [cool, hot], []);

        Assert.Empty(PlanChecker.Faults(bench, After(4)));
        Assert.Contains("oven 1 cannot change its temperature in time", PlanChecker.Faults(bench, After(3)));

        BenchPlan After(int minutes) =>
            new(
                bench,
                [new([Maker.OfTeam(1)])],
                [new(new(Maker.OfTeam(1), 0), 0, 0, 10, 1), new(new(Maker.OfTeam(1), 1), 0, 10 + minutes, 20 + minutes, 1)],
                []
            );
    }

    [Fact]
    public void An_oven_that_was_just_turned_down_is_not_down_yet()
    {
        // 60 °C cooler at 5 °C a minute take twelve minutes: after four of them at 140 °C the oven is still at 180 °C.
        var turned = new BenchBread("turned", "Turned", [Bakery.Baked("Bake", 10, 10, 200), Bakery.Baked("Dry", 4, 4, 140)]);
        var next = new BenchBread("next", "Next", [Bakery.Baked("Bake", 10, 10, 140)]);
        var bench = new BenchClass(new(60, 0, 0, 0), 1, 1, [], Bakery.Ovens(1, 1), [turned, next], []);

        Assert.Empty(PlanChecker.Faults(bench, After(8)));
        Assert.Contains("oven 1 cannot change its temperature in time", PlanChecker.Faults(bench, After(7)));

        BenchPlan After(int minutes) =>
            new(
                bench,
                [new([Maker.OfTeam(1)])],
                [
                    new(new(Maker.OfTeam(1), 0), 0, 0, 10, 1),
                    new(new(Maker.OfTeam(1), 0), 1, 10, 14, 1),
                    new(new(Maker.OfTeam(1), 1), 0, 14 + minutes, 24 + minutes, 1),
                ],
                []
            );
    }

    [Fact]
    public void A_demonstration_that_opens_a_shut_oven_is_seen()
    {
        var dry = Sound.Steps.First(step => step.Load.Bread == 1 && step.Step == 4);
        var bench = Bench with { Demonstrations = [new("Piercing", 2, null) { After = new(1, 4) }] };

        Assert.DoesNotContain(PlanChecker.Faults(bench, Shown(dry.End)), fault =>
            fault.Contains("before anything in it is ready", StringComparison.Ordinal)
        );
        Assert.Contains("Piercing opens an oven or a bowl before anything in it is ready", PlanChecker.Faults(bench, Shown(dry.End - 1)));

        BenchPlan Shown(int start) => Sound with { Demonstrations = [new(bench.Demonstrations[0], start)] };
    }

    [Fact]
    public void A_demonstration_without_its_own_burner_or_oven_is_seen()
    {
        var fewBurners = Bench with
        {
            Demonstrations = [.. Bench.Demonstrations.Select(shown => shown with { Uses = [new(Bakery.Burner, 7)] })],
        };
        Assert.Contains(
            "there are not enough burners",
            PlanChecker.Faults(
                fewBurners,
                Sound with
                {
                    Demonstrations =
                    [
                        .. Sound.Demonstrations.Zip(fewBurners.Demonstrations, (planned, shown) => planned with { Demonstration = shown }),
                    ],
                }
            )
        );

        var tin = new BenchBread("tin", "Tin", [Bakery.Baked("Bake", 10, 10, 200)]) { LeftToInstructor = true, IsForShow = true };
        var bench = new BenchClass(new(60, 0, 0, 0), 1, 1, [], Bakery.Ovens(1, 1), [tin], [new("Filling", 2, null) { Load = 0 }]);
        Assert.Empty(PlanChecker.Faults(bench, Baked(20)));
        Assert.Contains("Filling does not bake what it shows", PlanChecker.Faults(bench, Baked(21)));

        BenchPlan Baked(int start) =>
            new(
                bench,
                [new([Maker.OfTeam(1)])],
                [new(new(Maker.Instructor, 0), 0, start, start + 10, 1)],
                [new(bench.Demonstrations[0], 20)]
            );
    }

    [Fact]
    public void Somebody_at_the_oven_during_a_demonstration_is_seen()
    {
        var bench = Bench with { Demonstrations = [new("Something", 4, null)] };
        var turned = Sound.Steps.First(step => step.Load.Bread == 1 && step.Step == 4).Start;

        Assert.Contains(
            "an oven is seen to while all watch Something",
            PlanChecker.Faults(bench, Sound with { Demonstrations = [new(bench.Demonstrations[0], turned - 1)] })
        );
        Assert.DoesNotContain(
            "an oven is seen to while all watch Something",
            PlanChecker.Faults(bench, Sound with { Demonstrations = [new(bench.Demonstrations[0], turned)] })
        );
    }

    [Fact]
    public void Two_weighings_on_one_scale_are_seen()
    {
        var scales = Bench with
        {
            Equipment = [.. Bench.Equipment, new(EquipmentKind.Scale, 5)],
            Breads =
            [
                Bakery.Buns with
                {
                    Steps = [Bakery.Buns.Steps[0] with { Uses = [new(EquipmentKind.Scale, 1)] }, .. Bakery.Buns.Steps.Skip(1)],
                },
                .. Bench.Breads.Skip(1),
            ],
        };
        Assert.Contains("there are not enough scales", PlanChecker.Faults(scales, Sound));
    }

    [Fact]
    public void Milk_that_stands_out_too_long_is_seen()
    {
        var first = Sound.StepsOf(new(Maker.OfTeam(1), 0)).First();
        var baked = Sound.StepsOf(new(Maker.OfTeam(1), 0)).Last(step => step.Oven is not null);
        Assert.Empty(PlanChecker.Faults(Within(baked.End - first.Start), Sound));
        Assert.Contains(PlanChecker.Faults(Within(baked.End - first.Start - 1), Sound), fault =>
            fault.Contains("out of the refrigerator too long", StringComparison.Ordinal)
        );

        static BenchClass Within(int minutes) =>
            Bench with
            {
                Breads =
                [
                    Bakery.Buns with
                    {
                        Steps = [Bakery.Buns.Steps[0] with { BakedWithinMinutes = minutes }, .. Bakery.Buns.Steps.Skip(1)],
                    },
                    .. Bench.Breads.Skip(1),
                ],
            };
    }

    [Fact]
    public void Butter_is_taken_out_before_a_demonstration_that_is_in_the_way_and_not_after_it()
    {
        var first = Sound.StepsOf(new(Maker.OfTeam(1), 0)).First();
        var shown = Sound.Demonstrations[0];
        foreach (var amid in Enumerable.Range(shown.Start, shown.Demonstration.Minutes))
        {
            var soft = Soft(first.Start - amid);
            Assert.Empty(PlanChecker.Faults(soft, Sound));
            Assert.All(TakenOut.Of(Sound with { Class = soft }).Where(taken => taken.Makers.Contains(Maker.OfTeam(1))), taken =>
                Assert.Equal(shown.Start, taken.Minute)
            );
        }
    }

    [Theory]
    [InlineData(1, "butter is taken out too late")]
    [InlineData(-1, "longer than it has to")]
    public void Butter_that_is_taken_out_at_another_minute_is_seen(int later, string fault)
    {
        var taken = TakenOut.Of(Sound with { Class = Soft(60) });
        Assert.Empty(PlanChecker.Faults(Soft(60), Sound));
        Assert.Contains(
            PlanChecker.Faults(Soft(60), Sound, [taken[0] with { Minute = taken[0].Minute + later }, .. taken.Skip(1)]),
            found => found.Contains(fault, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Butter_that_nobody_takes_out_is_seen() =>
        Assert.Contains(PlanChecker.Faults(Soft(60), Sound, []), found =>
            found.Contains("butter is not taken out", StringComparison.Ordinal)
        );

    [Fact]
    public void Butter_that_is_fetched_amid_a_demonstration_is_seen()
    {
        var first = Sound.StepsOf(new(Maker.OfTeam(1), 0)).First();
        var amid = Sound.Demonstrations[0].Start + 1;
        var taken = TakenOut.Of(Sound with { Class = Soft(first.Start - amid) });
        Assert.Contains(
            "the instructor is asked for elsewhere amid a demonstration",
            PlanChecker.Faults(
                Soft(first.Start - amid),
                Sound,
                [.. taken.Select(each => each with { Minute = each.Start - each.Heat.StandsMinutes })]
            )
        );
    }

    /// <summary>An oven that would be switched on amid a demonstration is switched on before it.</summary>
    [Fact]
    public void No_dial_is_turned_amid_a_demonstration()
    {
        var bread = new BenchBread("bread", "Bread", [Bakery.Baked("Bake", 10, 10, 200)]);
        var bench = new BenchClass(new(60, 0, 0, 0), 1, 1, [], Bakery.Ovens(1, 1, heatUp: 20), [bread], [new("Something", 4, null)]);
        foreach (var start in Enumerable.Range(0, 27))
        {
            var plan = new BenchPlan(
                bench,
                [new([Maker.OfTeam(1)])],
                [new(new(Maker.OfTeam(1), 0), 0, 30, 40, 1)],
                [new(bench.Demonstrations[0], start)]
            );
            Assert.Empty(PlanChecker.Faults(bench, plan));
            Assert.Equal(start is 7 or 8 or 9 ? start : 10, OvenCourse.Of(plan)[0].Spans[0].From);
        }
    }

    private static BenchClass Soft(int minutes) =>
        Bench with
        {
            Breads =
            [
                Bakery.Buns with
                {
                    Steps =
                    [
                        Bakery.Buns.Steps[0] with
                        {
                            Heats = [new("butter", Baking.Quantities.Temperature.FromCelsius(18), minutes)],
                        },
                        .. Bakery.Buns.Steps.Skip(1),
                    ],
                },
                .. Bench.Breads.Skip(1),
            ],
        };

    private static BenchPlan Moved(int bread, int from, int minutes, int team = 1) =>
        Sound with
        {
            Steps =
            [
                .. Sound.Steps.Select(step =>
                    step.Load == new BenchLoad(Maker.OfTeam(team), bread) && step.Step >= from
                        ? step with
                        {
                            Start = step.Start + minutes,
                            End = step.End + minutes,
                        }
                        : step
                ),
            ],
        };

    private static BenchPlan Changed(int bread, int at, Func<PlannedStep, PlannedStep> change) =>
        Sound with
        {
            Steps =
            [
                .. Sound.Steps.Select(step => step.Load == new BenchLoad(Maker.OfTeam(1), bread) && step.Step == at ? change(step) : step),
            ],
        };

    private static void Broken(BenchPlan plan, string fault) =>
        Assert.Contains(PlanChecker.Faults(Bench, plan), found => found.Contains(fault, StringComparison.Ordinal));

    private static void Broken(BenchClass bench, string fault)
    {
        var faults = PlanChecker.Faults(bench, Sound);
        Assert.Contains(faults, found => found.Contains(fault, StringComparison.Ordinal));
        Assert.All(faults, found => Assert.Contains(fault, found, StringComparison.Ordinal));
    }
}
