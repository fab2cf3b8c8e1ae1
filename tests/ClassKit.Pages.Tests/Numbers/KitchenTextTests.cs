using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Classes;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Tests.Numbers;

public sealed class KitchenTextTests
{
    [Theory]
    [InlineData("1 1/3 cups", "1⅓ cups")]
    [InlineData("1/2 cup + 3 1/2 tbsp", "½ cup + 3½ tbsp")]
    [InlineData("4 lb 5 1/2 oz", "4 lb 5½ oz")]
    [InlineData("2 large eggs", "2 large eggs")]
    [InlineData(null, "–")]
    public void Fractions_become_single_signs(string? measure, string text) => Assert.Equal(text, KitchenText.Measure(measure));

    /// <summary>41 °F is 5 °C and 135 °F is 57 °C: FDA Food Code 3-501.16.</summary>
    [Theory]
    [InlineData(41, UnitSystem.Both, "5\u00A0°C (41\u00A0°F)")]
    [InlineData(135, UnitSystem.Metric, "57\u00A0°C")]
    [InlineData(135, UnitSystem.UnitedStates, "135\u00A0°F")]
    public void Temperatures_stand_in_the_units_of_the_class(double fahrenheit, UnitSystem units, string text) =>
        Assert.Equal(text, KitchenText.Temperature(Temperature.FromFahrenheit(fahrenheit), units));

    /// <summary>A class that types feet reads feet: 650 ft is 198.12 m, the international foot of 1959.</summary>
    [Theory]
    [InlineData(198.12, UnitSystem.UnitedStates, "650\u00A0ft")]
    [InlineData(198.12, UnitSystem.Both, "198\u00A0m")]
    public void A_height_stands_in_the_unit_of_the_class(double metres, UnitSystem units, string text) =>
        Assert.Equal(text, KitchenText.Height(metres, units));

    [Theory]
    [InlineData(3.27, 0.1, "3.3\u00A0g")]
    [InlineData(182, 0.1, "182.0\u00A0g")]
    [InlineData(182, 1, "182\u00A0g")]
    [InlineData(185, 5, "185\u00A0g")]
    [InlineData(1.25, 0.01, "1.25\u00A0g")]
    public void A_weighed_mass_has_the_decimals_of_its_scale(double grams, double resolution, string text) =>
        Assert.Equal(text, KitchenText.Weighed(Mass.FromGrams(grams), Mass.FromGrams(resolution), UnitSystem.Both));

    /// <summary>A class that only has US units reads what its scale shows: 0.05 oz is a decimal, 1/8 oz a fraction.</summary>
    [Theory]
    [InlineData(4.62, 0.05, "4.60\u00A0oz")]
    [InlineData(4.62, 0.125, "4⅝\u00A0oz")]
    public void Ounces_are_written_as_the_scale_has_them(double ounces, double division, string text) =>
        Assert.Equal(text, KitchenText.Weighed(Mass.FromOunces(ounces), Mass.FromOunces(division), UnitSystem.UnitedStates));

    /// <summary>350 °F and 78 °F come to 177 °C and 25.6 °C (NIST SP 811, B.9), and texts that say those tell what somebody wrote.</summary>
    [Theory]
    [InlineData("Bake, at 177 °C", "Bake, at 177 °C (350 °F)")]
    [InlineData("Bulk, at 25.6 °C", "Bulk, at 25.6 °C (78 °F)")]
    [InlineData("boils at 98.9 °C", "boils at 98.9 °C (210 °F)")]
    [InlineData("a mix of 27 °C", "a mix of 27 °C (81 °F)")]
    [InlineData("an oven of 190 °C", "an oven of 190 °C (374 °F)")]
    public void The_rounder_number_is_told_of_those_that_come_to_the_same(string text, string both) =>
        Assert.Equal(both, TwoScales.Of(text, UnitSystem.Both));

    [Theory]
    [InlineData(0, "0:00")]
    [InlineData(65, "1:05")]
    [InlineData(150, "2:30")]
    public void Plans_count_hours_and_minutes(int minutes, string text) => Assert.Equal(text, KitchenText.Clock(minutes));

    [Fact]
    public void A_gas_volume_too_small_to_see_is_none() =>
        Assert.Equal("none", KitchenText.Gas(new Band<Volume>(default, default, Volume.FromMillilitres(1))));
}
