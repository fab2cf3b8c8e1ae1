namespace ClassKit.Baking.Tests.Explanations;

/// <summary>The checker itself, by hand.</summary>
public sealed class StepArithmeticTests
{
    [Theory]
    [InlineData("28,470 g × 100 / 170", "16,747.06 g", true)]
    [InlineData("28,470 g × 100 / 170", "16,748 g", false)]
    [InlineData("3 × 26 °C - (21 °C + 22 °C) - 4 °C", "31 °C (88 °F)", true)]
    [InlineData("500 g / (1 - 2 % - 11 %)", "574.71 g", true)]
    [InlineData("500 g / (1 - 2 % - 11 %)", "573.26 g", false)]
    [InlineData("4.6 kg / 5.2 kg", "88.46 %", true)]
    [InlineData("the lesser of (0.8 g + 0.2 g) and 0.9 g", "0.9 g", true)]
    [InlineData("12 mmol × R × 300 K / 100,000 Pa", "299.32 mL", true)]
    [InlineData("101,325 Pa × (1 - 0.0065 × 1,500 / 288.15) ^ 5.255880", "84,556 Pa", true)]
    [InlineData("3 mmol + √(3 mmol ^ 2 + 4 mmol × 4 mmol)", "8 mmol", true)]
    public void A_line_is_right_or_not(string numbers, string result, bool right) =>
        Assert.Equal(right, StepArithmetic.Of(numbers).Meets(StepArithmetic.Result(result)));
}
