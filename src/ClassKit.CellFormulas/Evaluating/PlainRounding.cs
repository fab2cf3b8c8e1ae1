using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Rounding to places that are typed as a number: the one function in most of what students slip into a key.</summary>
internal static class PlainRounding
{
    private const int MostPlaces = 15;

    /// <summary>What is rounded, and how; null for any other node.</summary>
    public static (FormulaNode Rounded, Func<double, double> Round)? In(FormulaNode node) =>
        node is CallNode { Arguments: [var rounded, NumberNode { Value: >= 0 and <= MostPlaces and var places }] } call
        && places == Math.Floor(places)
        && Of(call.Name, (int)places) is { } round
            ? (rounded, round)
            : null;

    private static Func<double, double>? Of(string function, int places) =>
        function switch
        {
            "ROUND" => number => Numbers.Round(number, places),
            "ROUNDUP" => number => Numbers.RoundUp(number, places),
            "ROUNDDOWN" => number => Numbers.RoundDown(number, places),
            _ => null,
        };
}
