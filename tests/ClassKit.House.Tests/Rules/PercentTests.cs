using System.Text;
using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>
/// Between a share, 0.65, and what people read beside it, 65 %, numbers are scaled in two places: <c>Unit</c> for what stands in
/// cells, marks and pages, <c>PerHundred</c> for computations of doughs, which know no cells. Where others compute it is written once for
/// each: <c>InPercent</c> for the formulas of workbooks, <c>ofPercent</c> for scripts.
/// </summary>
public partial class PercentTests
{
    private static readonly string[] Places = ["Unit.cs", "PerHundred.cs"];

    /// <summary>Where a hundred is no percent, or percent is what the file is about.</summary>
    private static readonly Dictionary<string, string> Others = new()
    {
        ["UnitTable.cs"] = "a hundredweight is a hundred pounds, a register ton a hundred cubic feet",
        ["Pressure.cs"] = "a hectopascal is a hundred pascals",
        ["Sanity.cs"] = "a hectopascal is a hundred pascals",
        ["SelfRisingFlour.cs"] = "the standard's rule is for 100 g of flour",
        ["Operators.cs"] = "the percent sign of a cell formula",
        ["Paperwork.cs"] = "the percent sign of a cell formula",
    };

    [Fact]
    public void Shares_and_percent_are_scaled_in_two_places()
    {
        var elsewhere = SourceLine
            .Of("src")
            .Where(line =>
                !Places.Contains(Path.GetFileName(line.File)) && !Others.ContainsKey(Path.GetFileName(line.File)) && Scales(line.Text)
            )
            .Select(line => line.Shown)
            .ToList();
        Assert.True(
            elsewhere.Count == 0,
            $"{string.Join('\n', elsewhere)}\nUse Unit.Shown, Held or Scale; in Baking and BenchSums PerHundred."
        );
    }

    [Fact]
    public void Formulas_of_workbooks_scale_in_one_place()
    {
        var elsewhere = SourceLine
            .Of("src")
            .Where(line => Path.GetFileName(line.File) is not ("InPercent.cs" or "FindingWords.cs") && ScalesInText(line.Text))
            .Select(line => line.Shown)
            .ToList();
        Assert.True(elsewhere.Count == 0, $"{string.Join('\n', elsewhere)}\nUse InPercent.Of.");
        Assert.Contains(SourceLine.Of("src"), line =>
            line.File.EndsWith("/InPercent.cs", StringComparison.Ordinal) && ScalesInText(line.Text)
        );
    }

    [Fact]
    public void Scripts_scale_in_one_place()
    {
        var found = SourceLine.Of("src", "*.js").Where(line => Scaling().IsMatch(line.Text)).ToList();
        Assert.Contains("const ofPercent = value => value / 100;", Assert.Single(found).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("$\"IF(ROUND(100*{reached},2)<{line},1,0)\"", true)]
    [InlineData("$\"{reached}*100\"", true)]
    [InlineData("$\"SUM({a})/100\"", true)]
    [InlineData("\"flour × its % / 100\"", false)]
    [InlineData("$\"IF(ROUND({InPercent.Of(reached)},2)<{line},1,0)\"", false)]
    [InlineData("$\"{grams}*1000\"", false)]
    [InlineData("var percent = 100 * part / whole;", false)]
    public void A_formula_that_scales_is_known(string line, bool scales) => Assert.Equal(scales, ScalesInText(line));

    [Fact]
    public void Each_other_hundred_is_still_there()
    {
        var gone = Others
            .Keys.Except(SourceLine.Of("src").Where(line => Scales(line.Text)).Select(line => Path.GetFileName(line.File)))
            .ToList();
        Assert.True(
            gone.Count == 0,
            $"{string.Join(", ", gone)}: nothing is scaled by 100 there any more; take the line out of {nameof(PercentTests)}."
        );
    }

    [Theory]
    [InlineData("var shown = unit.IsPercent ? step * 100 : step;", true)]
    [InlineData("return isPercent ? number / 100 : number;", true)]
    [InlineData("Relative(part.Tolerance.Amount * 100)", true)]
    [InlineData("var percent = 100 * part / whole;", true)]
    [InlineData("percent / 100m", true)]
    [InlineData("share * 1000", false)]
    [InlineData("grams / 100.5", false)]
    [InlineData("var shown = unit.Shown(step);", false)]
    [InlineData("part.Unit.IsPercent ? \"in %\" : part.Unit;", false)]
    [InlineData("\"flour × its % / 100\"", false)]
    [InlineData("$\"IF(ROUND(100*{reached},2)<{line},1,0)\"", false)]
    [InlineData("/// 5 g / 100 g of flour", false)]
    public void A_line_that_scales_is_known(string line, bool scales) => Assert.Equal(scales, Scales(line));

    private static bool Scales(string line) => Scaling().IsMatch(CodeOf(line));

    private static bool ScalesInText(string line) => !line.TrimStart().StartsWith("//", StringComparison.Ordinal) && InText().IsMatch(line);

    /// <summary>Words are not looked at, what stands in their holes is.</summary>
    private static string CodeOf(string line)
    {
        var code = new StringBuilder();
        var outer = new Stack<bool>();
        var isText = false;
        foreach (var letter in line.TrimStart().StartsWith("//", StringComparison.Ordinal) ? "" : line)
        {
            if (letter == '"')
                isText = !isText;
            else if (letter == '{' && isText)
            {
                outer.Push(isText);
                isText = false;
            }
            else if (letter == '}' && !isText && outer.Count > 0)
                isText = outer.Pop();
            else if (!isText)
                code.Append(letter);
        }
        return code.ToString();
    }

    [GeneratedRegex(@"""[^""]*((?<![\d.,])100\*|[*/]100(?![\d.]))")]
    private static partial Regex InText();

    [GeneratedRegex(@"[*/] ?100m?(?![\d.])|(?<![\d.,])100m? ?\*")]
    private static partial Regex Scaling();
}
