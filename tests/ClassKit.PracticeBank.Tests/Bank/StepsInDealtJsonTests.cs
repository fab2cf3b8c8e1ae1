using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Solutions;
using ClassKit.UseCases.Dealing;

namespace ClassKit.PracticeBank.Tests.Bank;

public sealed class StepsInDealtJsonTests
{
    [Fact]
    public void Steps_are_still_there_when_a_deal_is_read_again_for_grading()
    {
        var exercise = ShippedBank.Of("hot_weekend");
        var dealt = Dealer
            .Deal("bank", "Bank", [exercise], new("marks", "Marks", 0.4m, 1, 0, 0.6m), new("Class", [new("s-1", "Student")]), 1)
            .Class!;
        var again = DealtJson.Read("dealt.json", DealtJson.Write(dealt)).Model!;

        var (before, after) = (Solution(dealt), Solution(again));
        Assert.NotEmpty(before.Steps);
        Assert.Equal(before.Steps, after.Steps);
        Assert.Equal(before.Numbers, after.Numbers);
        // Whoever reads the file alone finds a key over givens and earlier parts.
        Assert.DoesNotContain("water_temp", again.Exercises[0].Parts[0].Key.Names);
    }

    private static WorkedSolution Solution(DealtClass dealt) =>
        WorkedSolution.Of(
            dealt.Exercises[0],
            dealt.Exercises[0].Parts[0],
            dealt.Students[0].GivensOf("hot_weekend"),
            dealt.Students[0].AnswersOf("hot_weekend")
        );
}
