using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;

namespace ClassKit.PracticeBank.Tests.Bank;

public sealed class WordsInDealtJsonTests
{
    private static string Written { get; } =
        DealtJson.Write(
            Dealer
                .Deal(
                    "bank",
                    "Bank",
                    [ShippedBank.Of("jar_beside_the_dough")],
                    new("marks", "Marks", 0.4m, 1, 0, 0.6m),
                    new("Class", [new("s-1", "Student")]),
                    1
                )
                .Class!
        );

    [Fact]
    public void What_is_looked_for_is_still_there_when_a_deal_is_read_again()
    {
        var again = DealtJson.Read("dealt.json", Written).Model!;

        Assert.Equal(
            ShippedBank.Of("jar_beside_the_dough").Parts.Select(part => part.InWords),
            again.Exercises[0].Parts.Select(part => part.InWords)
        );
        Assert.Equal(Written, DealtJson.Write(again));
    }

    [Theory]
    [InlineData("\"kind\": \"written\"", "\"kind\": \"spoken\"", "no way to answer in words")]
    [InlineData("\"lookFor\": \"One point", "\"lookFor\": \" \", \"other\": \"", "looks for nothing")]
    [InlineData("\"key\": \"=0\"", "\"key\": \"=1\"", "nothing can be held against it")]
    public void A_record_that_somebody_changed_is_refused_with_the_reason(string written, string changed, string reason)
    {
        Assert.Contains(written, Written, StringComparison.Ordinal);

        var reading = DealtJson.Read("dealt.json", Written.Replace(written, changed, StringComparison.Ordinal));

        Assert.Null(reading.Model);
        Assert.Contains(reading.Problems, problem => problem.Found.Contains(reason, StringComparison.Ordinal));
    }
}
