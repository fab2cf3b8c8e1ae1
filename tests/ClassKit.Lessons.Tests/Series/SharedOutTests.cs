using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Series;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Series;

/// <summary>A bread in several ways, shared out among the teams.</summary>
public sealed class SharedOutTests
{
    private static readonly Ingredient Powder = IngredientCatalog.Get("baking_powder");
    private static readonly Ingredient Soda = IngredientCatalog.Get("baking_soda");
    private static readonly Ingredient Yeast = IngredientCatalog.Get("instant_yeast");

    private static readonly SeriesMember None = new(
        "muffins",
        "No leavening",
        "",
        [new SeriesChange.LeftOut(Powder), new SeriesChange.LeftOut(Soda)]
    );
    private static readonly SeriesMember Old = new(
        "muffins",
        "Old powder",
        "",
        [new SeriesChange.Weakened(Powder, 0.5), new SeriesChange.Weakened(Soda, 0.5)]
    );
    private static readonly SeriesMember Half = new(
        "muffins",
        "Half the powder",
        "",
        [new SeriesChange.Share(Powder, 1.25), new SeriesChange.Share(Soda, 0.4)]
    );
    private static readonly SeriesMember Held = new("muffins", "Held 40 min", "", [new SeriesChange.Held("Mix", 40)]);
    private static readonly SeriesMember Short = new("buns", "Under-proofed", "", [new SeriesChange.Timed("Second rise", 5, 5)]);

    private static ComputedPack Pack(int teams, params SeriesMember[] series) =>
        ComputedPack.Build(SampleLesson.Lesson with { Series = series }, SampleLesson.Class with { Teams = teams }).Value;

    /// <summary>In turn, counted by hand; where there are fewer teams than breads a team makes two, and none is left out.</summary>
    [Theory]
    [InlineData(6, 3, "1 4 | 2 5 | 3 6")]
    [InlineData(5, 3, "1 4 | 2 5 | 3")]
    [InlineData(3, 3, "1 | 2 | 3")]
    [InlineData(2, 3, "1 | 2 | 1")]
    [InlineData(1, 2, "1 | 1")]
    public void Teams_take_the_breads_in_turn(int teams, int breads, string shares) =>
        Assert.Equal(
            shares,
            string.Join(" | ", Enumerable.Range(0, breads).Select(at => string.Join(' ', SharedOut.TeamsOf(at, breads, teams))))
        );

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(8)]
    public void Every_team_has_a_bread_and_every_bread_a_team(int teams)
    {
        var cards = Pack(teams, None, Old, Held).Cards.Where(card => card.Bread.Place?.OfId == "muffins").ToList();

        Assert.Equal(
            ["muffins", "muffins_no_leavening", "muffins_old_powder", "muffins_held_40_min"],
            cards.Select(card => card.Bread.Formula.Id)
        );
        Assert.All(cards, card => Assert.NotEmpty(card.Teams));
        Assert.Equal(Enumerable.Range(1, teams), cards.SelectMany(card => card.Teams).Distinct().Order());
        Assert.Equal(Math.Max(teams, cards.Count), cards.Sum(card => card.Loads));
    }

    /// <summary>What is ordered is what the teams weigh: each bread's batch as often as it is made.</summary>
    [Fact]
    public void The_requisition_is_for_those_who_make_it()
    {
        var pack = Pack(8, None, Held);

        foreach (var line in pack.Requisition)
        {
            var weighed = pack.Cards.Sum(card =>
                card.Batch.Lines.Where(part => part.Ingredient.Id == line.Ingredient.Id).Sum(part => (decimal)part.Weighed.Grams)
                * card.Teams.Count
            );
            Assert.Equal((double)weighed, line.Mass.Grams, 1e-6);
        }
        Assert.DoesNotContain(pack.Cards.Single(card => card.Bread.Formula.Id == "muffins_no_leavening").Batch.Lines, line =>
            line.Ingredient == Powder || line.Ingredient == Soda
        );
    }

    /// <summary>
    /// Less or weaker leavening and a stand make less gas or hold less, and none at all the least: that is what a series shows. Half the
    /// strength is half the powder.
    /// </summary>
    [Fact]
    public void What_is_changed_changes_the_gas()
    {
        var gas = Pack(8, None, Old, Half, Held, Short).Comparison.ToDictionary(compared => compared.Bread.Formula.Id);
        double Made(string id) => gas[id].PerPiece.Made.Typical.Millilitres;
        double Kept(string id) => gas[id].PerPiece.Held.Baked.Typical.Millilitres;

        Assert.True(
            Kept("muffins_no_leavening") < Kept("muffins_old_powder") && Kept("muffins_old_powder") < Kept("muffins"),
            "old powder"
        );
        // Nobody has published how fast a batter with soda and powder loses its gas.
        Assert.Equal([false, true], [gas["muffins_held_40_min"].IsRisePredicted, gas["muffins"].IsRisePredicted]);
        Assert.True(Made("buns_under_proofed") < Made("buns"), "under-proofed");
        // A dough of old powder holds a little less of everything else.
        Assert.Equal(1, Made("muffins_old_powder") / Made("muffins_half_the_powder"), 0.02);
    }

    /// <summary>What age leaves of a powder nobody has published: no gas, no height, and as before no word of a fresh one's.</summary>
    [Fact]
    public void What_age_has_left_of_a_powder_is_not_predicted()
    {
        var aged = new SeriesMember("muffins", "Old tin", "", [new SeriesChange.Aged(Powder, "kept open 6 months")]);
        var gas = Pack(8, aged).Comparison.ToDictionary(compared => compared.Bread.Formula.Id);

        Assert.Equal((false, false), (gas["muffins_old_tin"].IsGasPredicted, gas["muffins_old_tin"].IsRisePredicted));
        Assert.Equal((true, true), (gas["muffins"].IsGasPredicted, gas["muffins"].IsRisePredicted));
        Assert.Null(Prediction.Of(Measure.Height, gas["muffins_old_tin"], Pack(8).BoilingPoint));
    }

    /// <summary>
    /// A batter that was mixed cold stands at 0, 20 and 40 minutes: nearer to the room each time and never past it; as much gas takes more
    /// room, and water holds less of it.
    /// </summary>
    [Fact]
    public void A_held_batter_warms_toward_the_room_and_its_gas_with_it()
    {
        var cold = SampleLesson.Muffins with
        {
            MixTemperature = null,
            Steps = [.. SampleLesson.Muffins.Steps.Select(step => step with { Work = StepWork.Usual })],
        };
        var pack = ComputedPack
            .Build(
                SampleLesson.Of(cold) with
                {
                    Series = [Held with { Name = "Held 20 min", Changes = [new SeriesChange.Held("Mix", 20)] }, Held],
                },
                SampleLesson.Class
            )
            .Value;
        double[] door = [.. pack.Comparison.Select(compared => compared.PerPiece.Course.Last(point => !point.InOven).Dough.Celsius)];
        double[] gas = [.. pack.Comparison.Select(compared => compared.PerPiece.OnBench.Typical.Millilitres)];
        var mixed = pack.Cards[0].Mix.Mixed.Typical.Celsius;

        Assert.True(mixed < 18, $"{mixed}");
        Assert.Equal(mixed, door[0]);
        Assert.True(
            door[0] + 1 < door[1] && door[1] + 0.5 < door[2] && door[2] < SampleLesson.Class.KitchenTemperature.Celsius,
            string.Join(' ', door)
        );
        Assert.True(gas[0] < gas[1] && gas[1] < gas[2], string.Join(' ', gas));
        Assert.Equal(door[2], pack.Comparison[2].Stood!.Value.Typical.Celsius, 1e-9);
    }

    [Fact]
    public void Old_powder_is_weighed_as_before()
    {
        var cards = Pack(8, Old).Cards;

        Assert.Equal(
            cards.Single(card => card.Bread.Formula.Id == "muffins").Batch.Lines.Select(line => line.Weighed),
            cards.Single(card => card.Bread.Formula.Id == "muffins_old_powder").Batch.Lines.Select(line => line.Weighed)
        );
    }

    [Fact]
    public void A_control_and_a_series_go_together()
    {
        var control = new LessonDemonstration("Nothing in it", 3, "muffins", "Mix", "") { ControlOf = "muffins" };
        var pack = ComputedPack.Build(SampleLesson.Lesson with { Series = [None], Demonstrations = [control] }, SampleLesson.Class).Value;
        var series = pack.Comparison.Single(compared => compared.Bread.Formula.Id == "muffins_no_leavening");

        Assert.Equal(pack.Controls.Single().Compared.PerPiece.Held.Baked, series.PerPiece.Held.Baked);
        Assert.Equal(
            pack.Controls.Single().Batch.Lines.Select(line => line.Ingredient.Id),
            series.Bread.Formula.Lines.Select(line => line.Ingredient.Id)
        );
    }

    /// <summary>A text of the bread names its own values on every card, and what is not in it weighs nothing.</summary>
    [Fact]
    public void Texts_name_the_values_of_their_own_bread()
    {
        var bread = SampleLesson.Muffins with { Why = "{muffins.baking_powder} of {muffins.flour} for {teams}" };

        var changed = ChangedBread.Of(bread, None);

        Assert.Equal(
            "muffins_no_leavening.baking_powder muffins_no_leavening.flour teams",
            string.Join(' ', changed.Why.Placeholders.Select(place => place.Name))
        );
        Assert.Equal("muffins: no leavening", changed.Formula.Title);
    }

    [Fact]
    public void A_stand_is_a_step_behind_the_one_that_it_follows()
    {
        var steps = ChangedBread.Of(SampleLesson.Muffins, Held).Steps;
        var at = steps.ToList().FindIndex(step => step.Name == "Mix");

        Assert.Equal((40, 40, 0), (steps[at + 1].MinMinutes, steps[at + 1].MaxMinutes, steps[at + 1].Work.People));
        Assert.Equal(SampleLesson.Muffins.Steps.Count + 1, steps.Count);
    }

    [Fact]
    public void At_the_benches_each_team_has_its_own_and_sees_what_is_shown_before_it()
    {
        var pack = Pack(6, Old, Held);
        var bench = BenchClasses.Of(pack.Lesson, pack.Class);
        var breads = bench.Breads.Where(bread => bread.Teams is not null).ToList();

        Assert.Equal(["1 4", "2 5", "3 6"], breads.Select(bread => string.Join(' ', bread.Teams!)));
        Assert.Equal([null, "muffins", "muffins"], breads.Select(bread => bread.VariantOf));
        Assert.Equal(3 * 6, bench.Loads.Count);
    }

    [Fact]
    public void Its_heights_are_expected_apart()
    {
        var bread = SampleLesson.Muffins with { Shape = new BakingCup(70, 51, 35) };
        var pack = ComputedPack.Build(SampleLesson.Of(bread) with { Series = [None] }, SampleLesson.Class).Value;
        double Height(int at) => Prediction.Of(Measure.Height, pack.Comparison[at], pack.BoilingPoint)!.Value.Typical;

        Assert.True(Height(1) < Height(0));
    }
}
