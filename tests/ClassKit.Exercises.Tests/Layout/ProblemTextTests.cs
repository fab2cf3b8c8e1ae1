using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Tests.Layout;

public sealed class ProblemTextTests
{
    [Theory]
    [InlineData("g", "1000", "1500", "50", "1200", "1200\u00A0g")]
    [InlineData("°C", "20", "26", "0.5", "24", "24.0\u00A0°C")]
    [InlineData("%", "0.60", "0.70", "0.01", "0.65", "65\u00A0%")]
    [InlineData("%", "0.0150", "0.0200", "0.0010", "0.018", "1.8\u00A0%")]
    [InlineData("", "3", "3", "0", "3", "3")]
    [InlineData("°C", "-18", "-4", "1", "-18", "-18\u00A0°C")]
    public void A_value_shows_the_decimals_that_its_steps_need_and_its_unit(
        string unit,
        string from,
        string to,
        string step,
        string value,
        string text
    )
    {
        var given = new Given("x", "", unit, Number(from), Number(to), Number(step));

        Assert.Equal(text, GivenText.Of(given, Number(value)));
    }

    [Fact]
    public void Placeholders_of_givens_are_filled_and_other_braces_stay()
    {
        var flour = new Given("flour_mass", "Flour", "g", 1000, 1000, 0);
        var exercise = new Exercise(
            "x",
            "X",
            "any",
            ExerciseLevel.Standard,
            1,
            "",
            "Mix {flour_mass} and {salt} in {a bowl}.",
            [flour],
            [],
            [],
            []
        );

        Assert.Equal(
            "Mix 1000\u00A0g and {salt} in {a bowl}.",
            ProblemText.Fill(exercise, new Dictionary<string, decimal> { ["flour_mass"] = 1000m })
        );
    }

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
