using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Rubrics;

/// <summary>Reads to what a result is rounded: <c>1 %</c>, <c>0.5 %</c> or <c>none</c>.</summary>
internal static class RoundingLine
{
    private static readonly Bounds Steps = new(0.001, true, 50);

    public static Rounding? Read(Located? line, TieRule tie, ProblemList problems)
    {
        if (line is not { } text)
            return null;
        if (text.Text.Equals("none", StringComparison.OrdinalIgnoreCase))
            return new(null, tie);
        if (Dimensions.Percent.Read(text, "`rounding`", Steps, problems) is not { } percent)
            return null;
        var step = (decimal)percent;
        if (100 % step == 0)
            return new(step, tie);
        problems.Add(
            text.Line,
            $"`rounding` is {text.Text}, and 100 % is no whole number of such steps",
            "Write a step that divides 100 %, such as `1 %`, `0.5 %` or `5 %`, or `none`."
        );
        return null;
    }
}
