using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Between what a cell holds, 0.65, and what people read beside it, 65 %, numbers are scaled in one place: <c>AnswerUnit</c>.</summary>
public partial class PercentTests
{
    private const string Place = "AnswerUnit.cs";

    [Fact]
    public void Numbers_of_givens_and_answers_are_scaled_in_one_place()
    {
        var elsewhere = SourceLine.Of("src").Where(line => Path.GetFileName(line.File) != Place && Scales(line.Text)).Select(line => line.Shown).ToList();
        Assert.True(elsewhere.Count == 0, $"{string.Join('\n', elsewhere)}\nUse AnswerUnit.Shown, Held or Scale.");
    }

    [Theory]
    [InlineData("var shown = AnswerUnit.IsPercent(unit) ? step * 100 : step;", true)]
    [InlineData("return isPercent ? number / 100 : number;", true)]
    [InlineData("Relative(part.Tolerance.Amount * 100)", true)]
    [InlineData("var shown = AnswerUnit.Shown(unit, step);", false)]
    [InlineData("AnswerUnit.IsPercent(part.Unit) ? \"in %\" : part.Unit;", false)]
    public void A_line_that_scales_is_known(string line, bool scales) => Assert.Equal(scales, Scales(line));

    private static bool Scales(string line) => Scaling().IsMatch(line);

    [GeneratedRegex(@"IsPercent\b.*\b100\b|Tolerance\.Amount \* 100|Tolerance\.\w+\(\w+ / 100\)", RegexOptions.IgnoreCase)]
    private static partial Regex Scaling();
}
