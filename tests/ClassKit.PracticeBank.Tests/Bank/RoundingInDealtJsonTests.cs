using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;

namespace ClassKit.PracticeBank.Tests.Bank;

public sealed class RoundingInDealtJsonTests
{
    [Fact]
    public void A_rounding_is_frozen_with_the_deal()
    {
        var thermometers = ShippedBank.Of("oven_and_fridge");
        var rounded = thermometers with
        {
            Parts = [.. thermometers.Parts.Select(part => part with { Tolerance = Tolerance.Rounding(0.5) })],
        };
        var dealt = new DealtClass(
            "bank",
            "Bank",
            "Class",
            1,
            new("marks", "Marks", 0.4m, 1, 0, 0.6m),
            [rounded, thermometers with { Id = "other" }],
            []
        );

        var read = DealtJson.Read("dealt.json", DealtJson.Write(dealt)).Model!;
        Assert.All(read.Exercises[0].Parts, part => Assert.Equal(Tolerance.Rounding(0.5), part.Tolerance));
        Assert.All(read.Exercises[1].Parts, part => Assert.False(part.Tolerance.IsRounding));
    }
}
