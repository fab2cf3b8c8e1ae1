using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using static ClassKit.Exercises.Keys.KeyRounding.Direction;

namespace ClassKit.Exercises.Tests.Keys;

/// <summary>What a key rounds its result to, as the functions of spreadsheets do (OpenFormula 1.3, part 4, rounding functions).</summary>
public sealed class KeyRoundingTests
{
    [Theory]
    [InlineData("=ROUND(a/b,2)", 0.01, Nearest)]
    [InlineData("=ROUNDUP(a/b,0)", 1, Up)]
    [InlineData("=(ROUNDDOWN(a/b,-1))", 10, Down)]
    [InlineData("=INT(a/b)", 1, Down)]
    [InlineData("=TRUNC(a/b)", 1, Down)]
    [InlineData("=CEILING(a/b,5)", 5, Up)]
    [InlineData("=FLOOR(a/b,0.5)", 0.5, Down)]
    [InlineData("=MROUND(a/b,25)", 25, Nearest)]
    public void The_outermost_function_says_to_what_and_which_way(string key, double step, KeyRounding.Direction way)
    {
        var found = KeyRounding.Of(CellFormula.Of(key))!;

        Assert.Equal(step, found.Step, 1e-12);
        Assert.Equal(way, found.Way);
    }

    [Theory]
    [InlineData("=a/b")]
    [InlineData("=ROUNDUP(a/b,0)*500")]
    [InlineData("=ROUND(a,b)")]
    [InlineData("=MAX(a,b)")]
    public void A_key_whose_result_is_not_rounded_to_a_known_step_has_none(string key) => Assert.Null(KeyRounding.Of(CellFormula.Of(key)));

    /// <summary>44.44 batches are 44 to the nearest, and 72.92 are 73: whole batches were asked, and neither is a whole number.</summary>
    [Theory]
    [InlineData("=ROUNDDOWN(a/b,0)", 1, 44, 44.44, false)]
    [InlineData("=ROUNDDOWN(a/b,0)", 1, 44, 44, true)]
    [InlineData("=ROUNDUP(a/b,0)", 0.5, 44, 44.2, false)]
    [InlineData("=a/b", 1, 44.1, 44.44, true)]
    [InlineData("=ROUND(a/b,2)", 0.1, 44.12, 44.13, true)]
    public void What_the_key_rounds_must_be_rounded(string key, double step, double expected, double answer, bool isRight)
    {
        var part = new Part("p", "?", CellFormula.Of(key), "", Tolerance.Rounding(step), 1, true, []);

        Assert.Equal(isRight, part.Exactness.Accepts(expected, answer));
    }
}
