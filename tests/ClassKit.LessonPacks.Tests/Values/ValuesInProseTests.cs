using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Values;

public sealed class ValuesInProseTests
{
    [Fact]
    public void No_name_in_braces_is_left_on_any_page()
    {
        foreach (var (file, page) in BuiltPack.Demo.Pages.Concat(BuiltPack.Mountain.Pages))
            Assert.False(
                System.Text.RegularExpressions.Regex.IsMatch(page.QuerySelector("main")!.TextContent, @"(?<!\{)\{[a-z_.]+\}"),
                file
            );
    }

    /// <summary>
    /// By hand, with the heats of Geankoplis A.4-1 and ASHRAE (flour 1.84, milk 3.85, egg 3.63, butter 2.4, sugar 1.25 J/(g K)) and a bowl
    /// of a tenth: buns of 100 flour, 6 sugar and 57 of bowl at 24 °C and 12 egg at 4 °C take 78 milk and 8 butter at 32.2 °C to come to 27
    /// °C. Composition makes flour 1.99: a degree more. The same stands on the card and in the demonstration.
    /// </summary>
    [Fact]
    public void A_temperature_in_the_text_is_the_computed_one()
    {
        Assert.Contains("goes in at 33 °C (91 °F)", BuiltPack.Demo["formula-cards.html"].Body!.Words(), StringComparison.Ordinal);
        Assert.Contains(
            "whole milk and unsalted butter at 33 °C (91 °F)",
            BuiltPack.Demo["formula-cards.html"].Body!.Words(),
            StringComparison.Ordinal
        );
        foreach (var file in new[] { "guide.html", "projector.html" })
            Assert.Contains("stop at 33 °C (91 °F)", BuiltPack.Demo[file].Body!.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void Heights_in_a_model_answer_are_those_of_the_observation_sheet()
    {
        var page = BuiltPack.Demo["observations.html"];
        var expected = page.QuerySelector(".expects")!.Breads().Select(bread => page.Expected(bread)["Height"][0]).ToList();
        var answer = BuiltPack.Demo["guide.html"].Body!.Words();
        Assert.Equal(3, expected.Count);
        Assert.All(expected, height => Assert.Contains(height, answer, StringComparison.Ordinal));
    }

    /// <summary>US Standard Atmosphere 1976: 785 hPa at 2100 m (printed tables: 794.95 hPa at 2000 m, 746.82 hPa at 2500 m).</summary>
    [Fact]
    public void The_air_of_the_mountain_is_told_in_the_opening()
    {
        Assert.Matches("here, at 2,?100 m, with 785 hPa", BuiltPack.Mountain["handout.html"].Body!.Words());
        Assert.Contains("boils at 93 °C (199 °F)", BuiltPack.Mountain["guide.html"].Body!.Words(), StringComparison.Ordinal);
    }
}
