using System.Text.RegularExpressions;
using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

public sealed partial class SourcesAndScalesTests
{
    private static readonly (string Name, BuiltPack Pack)[] Packs = [("demo", BuiltPack.Demo), ("mountain", BuiltPack.Mountain)];

    private static readonly string[] ForTheInstructorAlone =
    [
        "guide.html",
        "requisition.html",
        "requisition.xlsx",
        "tasting-key.html",
        "tasting.xlsx",
    ];

    /// <summary>A source is a publication, by who wrote it, what and when: an address dies, and a recipe portal is nobody's word.</summary>
    [Fact]
    public void No_page_names_an_address_of_the_web_as_its_source()
    {
        foreach (var (name, pack) in Packs)
        foreach (var (file, page) in pack.Pages)
            Assert.Equal((name, file, ""), (name, file, Address().Match(page.QuerySelector("main")!.Words()).Value));
    }

    [Fact]
    public void A_page_for_students_points_to_nothing_that_only_the_instructor_has()
    {
        foreach (var (name, pack) in Packs)
        {
            foreach (var file in new[] { "handout.html", "formula-cards.html", "observations.html", "comparison.html" })
            {
                Assert.DoesNotContain(
                    pack[file].QuerySelectorAll("a[href]").Select(link => link.GetAttribute("href")),
                    ForTheInstructorAlone.Contains
                );
                Assert.DoesNotMatch(@"\b(in|of|see) (the|your) guide\b", pack[file].Body!.Words());
            }
            Assert.NotEmpty(name);
        }
    }

    [Fact]
    public void The_guide_opens_with_the_objectives()
    {
        foreach (var (_, pack) in Packs)
            Assert.Equal("objectives", pack["guide.html"].QuerySelector("main h2")!.Id);
    }

    /// <summary>Both classes use both scales: nobody has to reckon with a hot oven in front of them.</summary>
    [Fact]
    public void Beside_every_degree_Celsius_stands_the_degree_Fahrenheit()
    {
        foreach (var (name, pack) in Packs)
        foreach (var (file, page) in pack.Pages)
            Assert.All(
                page.QuerySelectorAll("main p, main li, main td, main dd, main th, main h2, main h3, main caption")
                    .Where(element => element.QuerySelector("p, li, td, dd") is null)
                    .Select(element => element.Words()),
                text => Assert.False(Alone().IsMatch(text), $"{name}/{file}: {text}")
            );
    }

    /// <summary>Prices stand in the requisition, to the cent.</summary>
    [Fact]
    public void No_number_of_any_page_has_more_digits_than_can_be_known()
    {
        foreach (var (name, pack) in Packs.Concat([("no oven", BuiltPack.NoOven), ("long morning", BuiltPack.LongMorning)]))
        foreach (var (file, page) in pack.Pages.Where(page => page.Key != "requisition.html"))
            Assert.Equal((name, file, ""), (name, file, string.Join('\n', Digits.TooFine(page.DocumentElement.OuterHtml))));
    }

    [Theory]
    [InlineData("<p>Water boils at 98.91 °C.</p>", "98.91 °C")]
    [InlineData("<td>97,539.57 Pa</td>", "97,539.57 Pa")]
    [InlineData("<td>1.6733 L</td>", "1.6733 L")]
    [InlineData("<td>0.01234 g</td>", "0.01234 g")]
    [InlineData("<td>1.673 L, 3.908 kg, 47.30 USD, 281.7 %, 0.0848 g</td>", "")]
    [InlineData("<p>You typed “190.5556 °C”. (FDA Food Code 3-501.16)</p>", "")]
    public void Too_many_digits_are_seen(string html, string tooFine) => Assert.Equal(tooFine, string.Join('\n', Digits.TooFine(html)));

    [GeneratedRegex(@"\b(?!schema\.org)[a-z0-9-]+\.(com|org|net|us|edu|gov|de|co\.uk|info)\b(/\S*)?", RegexOptions.IgnoreCase)]
    private static partial Regex Address();

    [GeneratedRegex(@"[0-9] °C(?! \([-−]?[0-9])(?!–| to [0-9])")]
    private static partial Regex Alone();
}
