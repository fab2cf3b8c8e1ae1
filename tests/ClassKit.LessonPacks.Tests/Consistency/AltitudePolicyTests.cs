using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// One policy for a high kitchen, wherever it is told: the smallest published change, of the leavening alone, and one thing at a time.
/// </summary>
public sealed class AltitudePolicyTests
{
    [Fact]
    public void Every_page_that_says_where_to_start_says_the_same()
    {
        foreach (var (file, page) in BuiltPack.Mountain.Pages.Concat(BuiltPack.Demo.Pages))
        {
            var words = page.Body!.Words();
            foreach (
                var other in new[]
                {
                    "the middle of what is published",
                    "start from the middle",
                    "nearest to the card",
                    "least that is published",
                }
            )
                Assert.False(words.Contains(other, StringComparison.Ordinal), $"{file}: {other}");
        }
        Assert.Contains(
            "the smallest published change, of the leavening alone",
            BuiltPack.Mountain["guide.html"].Body!.Words(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_first_trial_changes_one_ingredient_of_a_bread_and_no_oven()
    {
        var adjusted = BuiltPack.Adapted("thin-air-quick-breads", "mountain-class.md", "altitude formulas: adjusted");
        foreach (
            var (changed, written) in adjusted["formula-cards.html"]
                .QuerySelectorAll(".card")
                .Zip(BuiltPack.Mountain["formula-cards.html"].QuerySelectorAll(".card"))
        )
        {
            Assert.InRange(Percents(changed).Zip(Percents(written)).Count(pair => pair.First != pair.Second), 0, 1);
            Assert.Equal(Oven(written), Oven(changed));
        }

        static IEnumerable<string> Percents(IElement card) =>
            card.QuerySelector("table")!.QuerySelectorAll("tbody tr").Select(row => row.Children[1].Words());
        static string Oven(IElement card) =>
            card.QuerySelectorAll("li").Single(item => item.Words().StartsWith("Oven: ", StringComparison.Ordinal)).Words();
    }

    [Fact]
    public void Sea_level_stands_beside_here_in_comparison_slides_and_observations()
    {
        foreach (var file in new[] { "comparison.html", "projector.html", "observations.html" })
        {
            Assert.Contains(BuiltPack.Mountain[file].QuerySelectorAll("th").Select(head => head.Words()), head =>
                head.EndsWith("t sea level", StringComparison.Ordinal)
            );
            Assert.DoesNotContain(BuiltPack.Demo[file].QuerySelectorAll("th").Select(head => head.Words()), head =>
                head.EndsWith("t sea level", StringComparison.Ordinal)
            );
        }
    }
}
