using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Measured;

/// <summary>What teams typed, put together by hand: portions of 60 g filled to within 5 % are expected at 57 to 63 g.</summary>
public sealed class MeasuredClassTests
{
    private static readonly LessonFormula Popovers = SampleLesson.Popovers with
    {
        Observations =
        [
            new(Measure.MassBefore, "Scale tared?", "Filled by eye?"),
            new(Measure.MassAfter, "Burnt?", "Pierced?"),
            new(Measure.BakeLoss, "Short?", "Long?"),
            new(Measure.Height, "Door opened?", "Another tin?"),
        ],
    };

    private static readonly ComputedPack Pack = ComputedPack
        .Build(
            SampleLesson.Of(Popovers, SampleLesson.Buns with { Observations = [new(Measure.Height, "Cold?", "Warm?")] }),
            SampleLesson.Class
        )
        .Value;

    private static readonly ObservationForm Form = new(Pack);

    [Fact]
    public void Commas_and_points_are_decimals_the_loss_is_worked_out_and_what_is_no_number_is_named()
    {
        var team = Team(
            "Two",
            ("popovers.mass-before.1", "60,5"),
            ("popovers.mass-after.1", "54.45"),
            ("popovers.mass-before.2", "sixty"),
            ("popovers.mass-after.2", "50"),
            ("popovers.height.1", "-3"),
            ("other.height.1", "9")
        );

        Assert.Equal(
            [("MassBefore", 60.5), ("MassAfter", 54.45), ("MassAfter", 50), ("BakeLoss", 10)],
            team.Values.Select(value => (value.Measure.ToString(), Math.Round(value.Value, 9)))
        );
        Assert.Equal([("popovers.mass-before.2", "sixty"), ("popovers.height.1", "-3")], team.Unread);
    }

    [Theory]
    [InlineData("66", AgainstForecast.More, "Filled by eye?")]
    [InlineData("63.4", AgainstForecast.AsExpected, null)]
    [InlineData("50", AgainstForecast.Less, "Scale tared?")]
    public void The_authors_question_is_the_one_that_fits_what_the_class_saw(string typed, AgainstForecast lies, string? question)
    {
        var quantity = MeasuredClass.Of(Pack, [Team("One", ("popovers.mass-before.1", typed))]).Of(Measure.MassBefore);

        Assert.Equal(lies, quantity.Lies);
        Assert.Equal(question, quantity.Question?.ToString());
        Assert.Equal((57, 63), (Math.Round(quantity.Expected!.Value.Low, 9), Math.Round(quantity.Expected!.Value.High, 9)));
    }

    [Fact]
    public void Every_team_counts_once_however_many_pieces_it_measured()
    {
        var measured = MeasuredClass.Of(
            Pack,
            [
                Team("One", ("popovers.mass-before.1", "60"), ("popovers.mass-before.2", "62"), ("popovers.mass-before.3", "64")),
                Team("Two", ("popovers.mass-before.1", "58")),
            ]
        );

        Assert.Equal(60, measured.Of(Measure.MassBefore).Mean);
    }

    [Fact]
    public void What_is_left_is_expected_of_what_was_measured_before()
    {
        var left = MeasuredClass
            .Of(Pack, [Team("One", ("popovers.mass-before.1", "120"), ("popovers.mass-after.1", "100"))])
            .Of(Measure.MassAfter);
        var portion = MeasuredClass.Of(Pack, [Team("One", ("popovers.mass-after.1", "100"))]).Of(Measure.MassAfter);

        // Twice the card's 60 g, so twice its typical rest.
        Assert.Equal(2 * portion.Expected!.Value.Typical, left.Expected!.Value.Typical, 9);
    }

    /// <summary>600 g typed for 60 g, ringed as far from the rest, moves no other expectation.</summary>
    [Fact]
    public void A_slip_before_the_bake_predicts_nothing_of_what_is_left()
    {
        double Left(params string[] before) =>
            MeasuredClass
                .Of(
                    Pack,
                    [
                        .. before
                            .Index()
                            .Select(one =>
                                Team($"Team {one.Index}", ("popovers.mass-before.1", one.Item), ("popovers.mass-after.1", "52"))
                            ),
                    ]
                )
                .Of(Measure.MassAfter)
                .Expected!.Value.Typical;

        Assert.Equal(Left("59", "60", "61", "62", "63"), Left("59", "60", "61", "62", "63", "600"), 9);
        Assert.NotEqual(Left("59", "60", "61", "62", "63"), Left("59", "60", "61", "62", "63", "65"), 9);
    }

    [Fact]
    public void Heights_are_compared_within_teams_that_measured_both()
    {
        var measured = MeasuredClass.Of(
            Pack,
            [
                Team("One", ("popovers.height.1", "80"), ("buns.height.1", "60")),
                Team("Two", ("popovers.height.1", "70"), ("buns.height.1", "52")),
                Team("Three", ("popovers.height.1", "200")),
            ]
        );
        var (first, second, difference) = Assert.Single(measured.Differences);

        Assert.Equal(
            ("popovers", "buns", 2, 19),
            (first.Compared.Bread.Formula.Id, second.Compared.Bread.Formula.Id, difference.Pairs, difference.Mean)
        );
    }

    [Fact]
    public void Another_measure_is_another_form_and_a_class_renamed_is_not()
    {
        var other = ComputedPack.Build(SampleLesson.Of(Popovers), SampleLesson.Class).Value;

        Assert.NotEqual(Form.Identity, new ObservationForm(other).Identity);
        Assert.Equal(
            Form.Identity,
            new ObservationForm(ComputedPack.Build(Pack.AsWritten, SampleLesson.Class with { Name = "Baking 102" }).Value).Identity
        );
    }

    /// <summary>The bowl is held against the card's own balance, and a guess against what is expected: neither counts as far or measured.</summary>
    [Fact]
    public void A_bowl_and_a_guess_are_asked_of_every_bread()
    {
        var card = Pack.Cards.Single(card => card.Bread.Formula.Id == "buns");
        var warm = Math.Round(card.Mix.Mixed.High.Celsius + 2);
        var team = Team("One", ("buns.mixed.1", warm.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("buns.guess", "900"));
        var buns = MeasuredClass.Of(Pack, [team]).Breads.Single(bread => bread.Compared.Bread.Formula.Id == "buns");
        var (guess, mixed) = (buns.Quantities[0], buns.Quantities[1]);

        Assert.Equal((Measure.GuessedHeight, Measure.MixedTemperature), (guess.Asked.Measure, mixed.Asked.Measure));
        Assert.Equal((AgainstForecast.More, warm), (mixed.Lies, mixed.Mean));
        Assert.Equal(card.Mix.Mixed.Low.Celsius, mixed.Expected!.Value.Low, 9);
        Assert.Equal(buns.Height!.Expected, guess.Expected);
        Assert.True(team.HasMeasured);
        Assert.False(Team("Two", ("buns.guess", "60")).HasMeasured);
    }

    private static TeamMeasurements Team(string name, params (string Field, string Typed)[] fields) =>
        TeamMeasurements.Of(
            Form,
            fields.Append((ObservationForm.Team, name)).ToDictionary(field => field.Item1, field => field.Item2),
            "file"
        );
}

file static class FirstBread
{
    public static MeasuredQuantity Of(this MeasuredClass measured, Measure measure) =>
        measured.Breads[0].Quantities.Single(quantity => quantity.Asked.Measure == measure);
}
