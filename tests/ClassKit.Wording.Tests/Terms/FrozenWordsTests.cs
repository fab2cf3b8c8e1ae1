using ClassKit.Wording.Terms;

namespace ClassKit.Wording.Tests.Terms;

/// <summary>What freezing grades changes is told so that every line says a difference.</summary>
public sealed class FrozenWordsTests
{
    /// <summary>Of two works the other one is the lowest now: what it came to is what it was.</summary>
    [Fact]
    public void A_work_that_is_dropped_no_more_says_so() =>
        Assert.Equal(
            "  Ada Berg: Good (78 %) → Good (78 %): Dough sums 87.5 % → 87.5 % (dropped), Safety talk 62.5 % (dropped) → 90 %, Essay nothing → 40 %",
            FrozenWords
                .Of(
                    new(
                        "Autumn",
                        12,
                        2,
                        [
                            new(
                                "Ada Berg",
                                "Good",
                                "Good",
                                78,
                                78,
                                [
                                    new("Dough sums", 0.875m, 0.875m) { IsDropped = true },
                                    new("Safety talk", 0.625m, 0.9m) { WasDropped = true },
                                    new("Essay", null, 0.4m),
                                ]
                            ),
                        ]
                    )
                )
                .Last()
        );
}
