using System.Text.RegularExpressions;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>Cards of hot and cool kitchens ask for what can be had, and say what to mind.</summary>
public sealed class WarmAndCoolTests
{
    /// <summary>J. Cheung, Melting Point of Butter, The Physics Factbook (2003): 32 °C to 35 °C.</summary>
    [Theory]
    [MemberData(nameof(OtherKitchens.All), MemberType = typeof(OtherKitchens))]
    public void Butter_that_goes_in_cooler_than_it_melts_is_melted_first(string lesson, int metres, int room)
    {
        foreach (var card in OtherKitchens.Computed(lesson, metres, room).Cards)
        {
            var cools = card.Mix.Warmed.Any(part => part.Ingredient.Id == "unsalted_butter") && card.Mix.Warmed[0].Temperature.Celsius < 35;
            Assert.Equal(cools, card.Advice.Any(advice => advice.Message.Contains("melt it through", StringComparison.Ordinal)));
            Assert.True(
                card.Advice.Count(advice => advice.Code.StartsWith("fat-", StringComparison.Ordinal)) <= 1,
                card.Bread.Formula.Title
            );
        }
    }

    /// <summary>Common practice, no source: no water above 38 °C to 40 °C meets a starter.</summary>
    [Theory]
    [MemberData(nameof(OtherKitchens.All), MemberType = typeof(OtherKitchens))]
    public void No_water_above_forty_degrees_meets_a_starter(string lesson, int metres, int room)
    {
        foreach (
            var card in OtherKitchens
                .Computed(lesson, metres, room)
                .Cards.Where(card => card.Lines.Any(line => line.Line.Ingredient.StarterOf is not null))
        )
            Assert.All(card.Mix.Warmed, part => Assert.InRange(part.Temperature.Celsius, 0, 40));
    }

    [Theory]
    [MemberData(nameof(OtherKitchens.All), MemberType = typeof(OtherKitchens))]
    public void A_kitchen_warmer_than_a_rise_is_told_so(string lesson, int metres, int room)
    {
        foreach (var card in OtherKitchens.Computed(lesson, metres, room).Cards)
        {
            var rises = card
                .Bread.Steps.Where(step => step.Name.Contains("rise", StringComparison.OrdinalIgnoreCase) && step.Temperature is not null)
                .ToList();
            Assert.Equal(
                rises.Exists(rise => rise.Temperature!.Value.Celsius < room),
                card.Advice.Any(advice => advice.Code == "kitchen-too-warm")
            );
        }
    }

    [Fact]
    public void A_hot_kitchens_pages_melt_butter_above_where_it_melts()
    {
        var words = OtherKitchens.HotKitchen["formula-cards.html"].Body!.Words();

        Assert.DoesNotMatch(@"(?i)melt the butter in the milk[^.;]{0,60}take it off at (2\d|3[0-4]) °C|take it off at [6-9]\d °F", words);
        Assert.Contains("Your kitchen is warmer than the 28 °C (82 °F) of first rise and second rise", words, StringComparison.Ordinal);
        Assert.DoesNotContain("warm place", words, StringComparison.Ordinal);
    }

    /// <summary>
    /// No kitchen's scale shows thousandths of an ounce; the class profile's small scale shows 0.1 g. Common practice, no source.
    /// </summary>
    [Fact]
    public void What_the_small_scale_weighs_stands_in_what_it_shows()
    {
        foreach (var cell in OtherKitchens.HotKitchen["formula-cards.html"].QuerySelectorAll(".card table:first-of-type td strong"))
            Assert.False(Regex.IsMatch(cell.Words(), @"\.\d{3,} oz"), cell.Words());
        Assert.Contains(OtherKitchens.HotKitchen["formula-cards.html"].QuerySelectorAll(".card td strong"), cell =>
            Regex.IsMatch(cell.Words(), @"^\d+\.\d g$")
        );
    }
}
