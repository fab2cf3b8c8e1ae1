using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Authored;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>Cards and comparison tell one story of a proof.</summary>
public sealed class ProofTruthTests
{
    /// <summary>
    /// Of a bread as written, in any kitchen: full not before its card's shortest time, within the quarter to which the rate of yeast is
    /// known, or not at all.
    /// </summary>
    [Theory]
    [MemberData(nameof(OtherKitchens.All), MemberType = typeof(OtherKitchens))]
    public void No_bread_as_written_is_full_before_its_cards_shortest_time(string lesson, int metres, int room)
    {
        foreach (
            var compared in OtherKitchens
                .Computed(lesson, metres, room)
                .Comparison.Where(compared =>
                    compared.Bread.Formula.Leavening == Leavening.Yeast && compared.Bread.Place is not { IsAsWritten: false }
                )
        )
            Assert.True(
                compared.PerPiece.Held.OverproofedAfter is not { } full || full >= 0.75 * compared.Bench.Low,
                $"{compared.Bread.Formula.Title} at {metres} m, {room} °C: full after {compared.PerPiece.Held.OverproofedAfter}, on the card {compared.Bench.Low} to {compared.Bench.High}"
            );
    }

    /// <summary>What cards say of a rise, as times its volume at the beginning.</summary>
    private static readonly (string Words, double Times)[] Said =
    [
        ("has doubled", 2),
        ("have doubled", 2),
        ("half as large again", 1.5),
        ("grown by half", 1.5),
    ];

    /// <summary>Of each shipped bread, in every kitchen: what its card says of a rise is within what the model forecasts for it.</summary>
    [Theory]
    [MemberData(nameof(OtherKitchens.All), MemberType = typeof(OtherKitchens))]
    public void A_rise_comes_to_what_its_card_says(string lesson, int metres, int room)
    {
        foreach (var (bread, step, forecast) in Rises(lesson, metres, room))
        foreach (var (words, times) in Said.Where(said => step.Text.Written.Contains(said.Words, StringComparison.Ordinal)))
        {
            var told = $"{bread.Formula.Title}, {step.Name} at {metres} m, {room} °C: {words}, forecast {forecast}";
            if (step.Text.Written.Contains("do not wait until they " + words, StringComparison.Ordinal))
                Assert.True(forecast.Low < times, told);
            else
                Assert.True(forecast.Low <= times && times <= forecast.High, told);
        }
    }

    /// <summary>A rise that says how far it goes in words that nobody listed would not be held against its forecast.</summary>
    [Fact]
    public void Every_first_rise_says_how_far_it_goes()
    {
        var first = OtherKitchens.Lessons.SelectMany(lesson => Rises(lesson, 0, 21)).Where(rise => rise.Step.Name == "First rise").ToList();

        Assert.Equal(3, first.Count);
        Assert.All(first, rise => Assert.Contains(Said, said => rise.Step.Text.Written.Contains(said.Words, StringComparison.Ordinal)));
    }

    private static IEnumerable<(LessonFormula Bread, MethodStep Step, Band<double> Forecast)> Rises(string lesson, int metres, int room) =>
        from compared in OtherKitchens.Computed(lesson, metres, room).Comparison
        where compared.PerPiece.IsBenchPredicted && compared.Bread.Place is not { IsAsWritten: false }
        from rise in compared.PerPiece.Rises
        select (compared.Bread, compared.Bread.Steps.Single(step => step.Name == rise.Stage), rise.Times);

    [Fact]
    public void The_comparison_says_of_no_bread_as_written_that_it_is_full_before_its_card()
    {
        foreach (var pack in (BuiltPack[])[BuiltPack.Demo, BuiltPack.NoOven, OtherKitchens.LongMorningHigh, OtherKitchens.HotKitchen])
            Assert.DoesNotContain(
                "watch it, since a full dough over-proofs",
                pack["comparison.html"].Body!.Words(),
                StringComparison.Ordinal
            );
    }
}
