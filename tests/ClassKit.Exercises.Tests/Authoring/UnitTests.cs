using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Tests.Authoring;

/// <summary>What a unit says of itself, so that nobody asks for its sign.</summary>
/// <remarks>
/// What can be less than nothing follows from what is measured; codes are those of CONVERT, ECMA-376 Part 1, 18.17.7.48; what money is
/// called is common practice, no source.
/// </remarks>
public sealed class UnitTests
{
    [Theory]
    [InlineData("g", UnitKind.Mass, "g")]
    [InlineData("Grams", UnitKind.Mass, "g")]
    [InlineData("kilogram", UnitKind.Mass, "kg")]
    [InlineData("oz", UnitKind.Mass, "ozm")]
    [InlineData("pounds", UnitKind.Mass, "lbm")]
    [InlineData("mL", UnitKind.Volume, "ml")]
    [InlineData("L", UnitKind.Volume, "l")]
    [InlineData("tbsp", UnitKind.Volume, "tbs")]
    [InlineData("°C", UnitKind.Temperature, "C")]
    [InlineData("deg F", UnitKind.Temperature, "F")]
    [InlineData("min", UnitKind.Time, "mn")]
    [InlineData("kPa", UnitKind.Pressure, null)]
    [InlineData("mol", UnitKind.Amount, null)]
    [InlineData("cm", UnitKind.Length, null)]
    [InlineData("pieces", UnitKind.Count, null)]
    [InlineData("%", UnitKind.Share, null)]
    [InlineData("dollars", UnitKind.Money, null)]
    [InlineData("(CHF)", UnitKind.Money, null)]
    [InlineData("pounds sterling", UnitKind.Money, null)]
    [InlineData("", UnitKind.None, null)]
    [InlineData("rolls", UnitKind.Other, null)]
    [InlineData("mL/g", UnitKind.Other, null)]
    [InlineData("percent", UnitKind.Other, null)]
    public void A_unit_knows_what_it_measures_however_it_is_written(string sign, UnitKind kind, string? code)
    {
        var unit = Unit.Of(sign);

        Assert.Equal((kind, code, sign), (unit.Kind, unit.Code, unit.Sign));
        Assert.Equal(sign, $"{unit}");
    }

    [Fact]
    public void Two_units_are_one_if_they_are_written_alike()
    {
        Assert.Equal(Unit.Of("mL"), Unit.Of("mL"));
        Assert.NotEqual(Unit.Of("mL"), Unit.Of("ml"));
        Assert.Equal(Unit.Percent, Unit.Of("%"));
        Assert.Equal(Unit.None, Unit.Of(""));
    }

    [Theory]
    [InlineData("g", false)]
    [InlineData("cups", false)]
    [InlineData("h", false)]
    [InlineData("hPa", false)]
    [InlineData("mmol", false)]
    [InlineData("mm", false)]
    [InlineData("pieces", false)]
    [InlineData("°C", true)]
    [InlineData("dollars", true)]
    [InlineData("%", true)]
    [InlineData("", true)]
    [InlineData("buns", true)]
    public void There_cannot_be_less_of_a_quantity_than_nothing(string sign, bool may) => Assert.Equal(may, Unit.Of(sign).MayBeNegative);

    [Fact]
    public void In_percent_a_cell_holds_a_fraction()
    {
        Assert.Equal((65m, 0.65m), (Unit.Percent.Shown(0.65m), Unit.Percent.Held(65m)));
        Assert.Equal((65.0, 0.65), (Unit.Percent.Shown(0.65), Unit.Percent.Held(65.0)));
    }

    /// <summary>A unit that nobody knows changes nothing of a number.</summary>
    [Theory]
    [InlineData("rolls")]
    [InlineData("")]
    [InlineData("°C")]
    [InlineData("percent")]
    public void In_any_other_unit_a_cell_holds_what_is_read(string sign)
    {
        Assert.Equal((65m, 65m), (Unit.Of(sign).Shown(65m), Unit.Of(sign).Held(65m)));
        Assert.False(Unit.Of(sign).IsMoney || Unit.Of(sign).IsPercent);
    }
}
