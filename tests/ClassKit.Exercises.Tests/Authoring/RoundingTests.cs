using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Guarantees;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Tests.Guarantees;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Tests.Authoring;

/// <summary>
/// An answer that is right if it rounds as the key does. Halves go away from zero, as ROUND of OpenFormula has it (6.17.5).
/// </summary>
public sealed class RoundingTests
{
    [Theory]
    [InlineData(0.1, 12.437, 12.4, true)]
    [InlineData(0.1, 12.437, 12.449, true)]
    [InlineData(0.1, 12.437, 12.45, false)]
    [InlineData(0.1, 12.437, 12.35, true)]
    [InlineData(0.1, 12.437, 12.349, false)]
    [InlineData(5, 1204, 1205, true)]
    [InlineData(5, 1204, 1207.5, false)]
    [InlineData(1, -2.3, -1.5, true)]
    [InlineData(1, -2.3, -2.5, false)]
    [InlineData(1, 0.2, 0.5, false)]
    [InlineData(1, 0.2, -0.4, true)]
    public void An_answer_is_right_if_it_rounds_to_the_same_step(double step, double expected, double actual, bool isRight) =>
        Assert.Equal(isRight, Tolerance.Rounding(step).Accepts(expected, actual));

    [Fact]
    public void It_is_right_exactly_when_a_spreadsheet_rounds_both_alike()
    {
        var alike = CellFormula.Of("=ROUND(expected,1)=ROUND(actual,1)");
        var random = new Random(3);
        for (var draw = 0; draw < 2000; draw++)
        {
            // Thousandths that are no halves of a tenth; those are for the theory above.
            var (expected, actual) = (random.Next(-3000, 3000) / 1000.0 + 0.0004, random.Next(-3000, 3000) / 1000.0 + 0.0004);
            if (draw % 2 == 0)
                actual = expected + random.Next(-80, 80) / 1000.0;
            var names = new Dictionary<string, CellValue>
            {
                ["expected"] = CellValue.FromNumber(expected),
                ["actual"] = CellValue.FromNumber(actual),
            };

            Assert.True(KeyValues.Holds(alike, names) == Tolerance.Rounding(0.1).Accepts(expected, actual), $"{expected} and {actual}");
        }
    }

    [Theory]
    [InlineData(0.1, "g", 12.437, "12.4")]
    [InlineData(5, "g", 1203.6, "1205")]
    [InlineData(0.25, "", 3.3, "3.25")]
    [InlineData(0.01, "%", 0.6543, "65")]
    [InlineData(0.5, "dollars", 2.4, "2.50")]
    public void The_key_prints_what_the_answer_rounds_to(double step, string unit, double value, string printed) =>
        Assert.Equal(printed, ResultText.Number(Asked.Part("x", "=flour", Tolerance.Rounding(step), unit), value));

    [Fact]
    public void No_variant_is_dealt_whose_answer_lies_at_a_half()
    {
        // 500 g and 25 % of it are 125 g, halfway between 120 and 130.
        var breach = Asked.Breach(Asked.Exercise(Asked.Part("water", "=flour*share", Tolerance.Rounding(10))), flour: 500, share: 0.25m);

        Assert.Equal("no tie nearby", breach!.Rule);
        Assert.IsType<Breach.AtHalf>(breach);
        Assert.Null(Asked.Breach(Asked.Exercise(Asked.Part("water", "=flour*share", Tolerance.Rounding(100))), flour: 600, share: 0.20m));
    }
}
