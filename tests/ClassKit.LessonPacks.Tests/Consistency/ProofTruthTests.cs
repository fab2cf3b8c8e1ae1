using ClassKit.Baking.Formulas;
using ClassKit.LessonPacks.Tests.Samples;

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
