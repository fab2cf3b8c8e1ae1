namespace ClassKit.Grading.Tests;

public sealed class AnswerTextTests
{
    [Theory]
    [InlineData("182 g", "g", 182)]
    [InlineData("182g", "g", 182)]
    [InlineData("0.182 kg", "g", 182)]
    [InlineData("0,65", "", 0.65)]
    [InlineData("65 %", "%", 0.65)]
    [InlineData("1 1/2", "cups", 1.5)]
    [InlineData("3/4 cup", "cups", 0.75)]
    [InlineData("-4 °C", "°C", -4)]
    [InlineData("\u22124", "°C", -4)]
    [InlineData("1.5E3", "g", 1500)]
    [InlineData("1.250,5", "g", 1250.5)]
    [InlineData("1,250.5", "g", 1250.5)]
    [InlineData("12 345,5 g", "g", 12345.5)]
    [InlineData("12'345", "g", 12345)]
    [InlineData(".5", "g", 0.5)]
    // 1 lb = 453.59237 g and t/°F = 1.8 t/°C + 32, exact: NIST SP 811, appendix B.
    [InlineData("2.5 lb", "g", 1133.980925)]
    [InlineData("180 C", "°F", 356)]
    [InlineData("-40 F", "°C", -40)]
    public void Numbers_are_read_as_people_write_them(string text, string unit, double expected)
    {
        Assert.Equal(expected, AnswerText.Read(text, unit)[0], 1e-9);
    }

    [Fact]
    public void A_comma_before_three_digits_can_mean_two_things_and_both_are_tried()
    {
        Assert.Equal([1.25, 1250], AnswerText.Read("1,250", "g"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("g")]
    [InlineData("about five")]
    [InlineData("12 or 13")]
    [InlineData("1/0")]
    [InlineData("1.2.3")]
    [InlineData("12..5")]
    [InlineData("see scratch")]
    public void Words_are_no_numbers(string text)
    {
        Assert.Empty(AnswerText.Read(text, "g"));
    }
}
