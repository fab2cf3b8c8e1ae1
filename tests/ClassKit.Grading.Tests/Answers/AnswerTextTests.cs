using ClassKit.Grading.Answers;

namespace ClassKit.Grading.Tests.Answers;

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
    // What people type, by the ways of typing it.
    [InlineData("182.", "g", 182)]
    [InlineData("x = 182", "g", 182)]
    [InlineData("flour: 182 g", "g", 182)]
    [InlineData("m_1 = -4", "°C", -4)]
    [InlineData("about 182", "g", 182)]
    [InlineData("~182", "g", 182)]
    [InlineData("x ≈ 182 g", "g", 182)]
    [InlineData("approx. 182 g", "g", 182)]
    [InlineData("ca. 182", "g", 182)]
    [InlineData("182 g flour", "g", 182)]
    [InlineData("0.182 kg of flour", "g", 182)]
    [InlineData("182 (g)", "g", 182)]
    [InlineData("'182", "g", 182)]
    [InlineData("½", "cups", 0.5)]
    [InlineData("1½", "cups", 1.5)]
    [InlineData("1 ¾ cups", "cups", 1.75)]
    [InlineData("1-1/2 cups", "cups", 1.5)]
    [InlineData("1⁄2", "cups", 0.5)]
    [InlineData("1\u2009250\u202Fg", "g", 1250)]
    [InlineData("1\u00A0250", "g", 1250)]
    [InlineData("1’250.5", "g", 1250.5)]
    [InlineData("１８２", "g", 182)]
    [InlineData("－１．５", "g", -1.5)]
    [InlineData("١٨٢", "g", 182)]
    [InlineData("١٬٢٥٠٫٥", "g", 1250.5)]
    [InlineData("۱٫۸×۱۰^۲", "g", 180)]
    [InlineData("१८२", "g", 182)]
    [InlineData("𝟏𝟖𝟐", "g", 182)]
    [InlineData("1.8·10²", "g", 180)]
    [InlineData("1.8×10^2", "g", 180)]
    [InlineData("1,8 x 10^2 g", "g", 180)]
    [InlineData("1.8*10**2", "g", 180)]
    [InlineData("1.8e2", "g", 180)]
    [InlineData("1.8E+02 g", "g", 180)]
    [InlineData("2.1·10⁻³ mol", "mol", 0.0021)]
    [InlineData("10²", "g", 100)]
    [InlineData("–4", "°C", -4)]
    [InlineData("\u200E\u22124", "°C", -4)]
    [InlineData("$0.65", "dollars", 0.65)]
    [InlineData("-$1", "dollars", -1)]
    [InlineData("0,65 €", "dollars", 0.65)]
    [InlineData("65 cents", "dollars", 0.65)]
    [InlineData("65¢", "dollars", 0.65)]
    [InlineData("65 % of the flour", "%", 0.65)]
    [InlineData("٦٥٪", "%", 0.65)]
    [InlineData("6.5‰", "%", 0.0065)]
    [InlineData("12,34,567.8", "g", 1234567.8)]
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
    [InlineData("(182 g)")]
    [InlineData("$65")]
    [InlineData("65 €")]
    public void Words_are_no_numbers(string text)
    {
        Assert.Empty(AnswerText.Read(text, "g"));
    }
}
