using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.Baking.Tests.Explanations;

/// <summary>
/// Works out what an explained step prints, from its text alone: numbers with units, + - × / ^ √, brackets and "the lesser of … and …".
/// A printed number stands for all that round to it, so the outcome is an interval. It knows nothing of the code that made the text.
/// </summary>
internal sealed partial class StepArithmetic
{
    /// <summary>Trailing zeros are not printed, so a number with fewer digits was still rounded no coarser than to these.</summary>
    private const int LeastDigits = 3;

    private static readonly Dictionary<string, double> Units = new(StringComparer.Ordinal)
    {
        ["g"] = 1,
        ["kg"] = 1000,
        ["mg"] = 1e-3,
        ["L"] = 1,
        ["mL"] = 1e-3,
        ["mol"] = 1,
        ["mmol"] = 1e-3,
        ["g/mol"] = 1,
        ["L/mol"] = 1,
        ["Pa"] = 1,
        ["kPa"] = 1000,
        ["hPa"] = 100,
        ["K"] = 1,
        ["°C"] = 1,
        ["m"] = 1,
        ["%"] = 0.01,
        ["min"] = 1,
        ["h"] = 60,
        ["g/mL"] = 1000,
        ["mL/g"] = 1e-3,
        ["L/g"] = 1,
        ["mmol/(h g)"] = 1e-3 / 60,
        ["mmol/h"] = 1e-3 / 60,
    };

    private readonly List<string> _tokens;
    private int _at;

    private readonly bool _isResult;

    private StepArithmetic(string text, bool isResult) =>
        (_isResult, _tokens) = (isResult, [.. Token().Matches(text).Select(match => match.Value.Trim()).Where(token => token.Length > 0)]);

    /// <summary>What the text comes to. Whole numbers without a unit, such as pieces and the 100 of a percentage, are exact.</summary>
    public static Interval Of(string text) => Of(text, isResult: false);

    /// <summary>A printed result: its number with its unit, without what stands in brackets behind it.</summary>
    public static Interval Result(string text) => Of(InBrackets().Replace(text, ""), isResult: true);

    private static Interval Of(string text, bool isResult)
    {
        var known = Token().Replace(text, "").Trim();
        Assert.True(known.Length == 0, $"'{known}' in '{text}' is neither number, unit nor sign");
        StepArithmetic arithmetic = new(text, isResult);
        var result = arithmetic.Sum();
        Assert.True(arithmetic._at == arithmetic._tokens.Count, $"left over: {string.Join(' ', arithmetic._tokens.Skip(arithmetic._at))}");
        return result;
    }

    private Interval Sum()
    {
        var left = Product();
        while (Peek() is "+" or "-")
            left = Next() == "+" ? left + Product() : left - Product();
        return left;
    }

    private Interval Product()
    {
        var left = Power();
        while (Peek() is "×" or "/")
            left = Next() == "×" ? left * Power() : left / Power();
        return left;
    }

    private Interval Power()
    {
        var left = Factor();
        return Peek() == "^" && Next() == "^" ? left.Pow(Factor()) : left;
    }

    private Interval Factor()
    {
        var token = Next();
        switch (token)
        {
            case "-":
                return new Interval(0, 0) - Factor();
            case "√":
                return Factor().Root();
            case "R":
                return new(8314.462618, 8314.462619);
            case "the lesser of":
                var one = Factor();
                Assert.Equal("and", Next());
                return one.Least(Factor());
            case "(":
                var inside = Sum();
                Assert.Equal(")", Next());
                return inside;
        }
        Assert.Matches("^[0-9]", token);
        var digits = token.Replace(",", "", StringComparison.Ordinal);
        var value = double.Parse(digits, CultureInfo.InvariantCulture);
        var decimals = digits.Contains('.', StringComparison.Ordinal)
            ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1
            : 0;
        var isExact = !_isResult && decimals == 0 && !(Peek() is { } behind && Units.ContainsKey(behind));
        var printed = Math.Max(decimals, value == 0 ? LeastDigits : LeastDigits - 1 - (int)Math.Floor(Math.Log10(value)));
        var half = isExact ? 0 : 0.5 * Math.Pow(10, -printed);
        Interval number = new(value - half, value + half);
        return Peek() is { } unit && Units.TryGetValue(unit, out var factor) && Next() == unit
            ? number * new Interval(factor, factor)
            : number;
    }

    private string? Peek() => _at < _tokens.Count ? _tokens[_at] : null;

    private string Next()
    {
        Assert.True(_at < _tokens.Count, $"the text ends too early: {string.Join(' ', _tokens)}");
        return _tokens[_at++];
    }

    [GeneratedRegex(
        @"mmol/\(h g\)|mmol/h|g/mol|L/mol|g/mL|mL/g|L/g|the lesser of|and|[0-9][0-9,]*(?:\.[0-9]+)?|mmol|mol|kPa|hPa|Pa|°C|kg|mg|mL|min|[gLKmhR%]|[-+×/^√()]|\s+"
    )]
    private static partial Regex Token();

    [GeneratedRegex(@"\s\([^)]*\)$")]
    private static partial Regex InBrackets();
}
