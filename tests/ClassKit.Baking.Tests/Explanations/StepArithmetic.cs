using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.Baking.Tests.Explanations;

/// <summary>
/// Works out what an explained step prints, from its text alone: numbers with units, + - × / ^ √, brackets and "the lesser of … and …".
/// A printed number stands for all that round to it, so the outcome is an interval. It knows nothing of the code that made the text.
/// </summary>
internal sealed partial class StepArithmetic
{
    /// <summary>Trailing zeros are not printed, so a number with fewer decimals was still rounded no coarser than this. Whole numbers are taken as exact.</summary>
    private const int LeastDecimals = 2;

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

    private readonly bool _isOfThreeDigits;

    private StepArithmetic(string text, bool ofThreeDigits) => (_isOfThreeDigits, _tokens) = (ofThreeDigits, [.. Token().Matches(text).Select(match => match.Value.Trim()).Where(token => token.Length > 0)]);

    /// <summary>What the text comes to.</summary>
    /// <param name="text">The text.</param>
    /// <param name="ofThreeDigits">True where numbers are printed to three digits, whole ones too.</param>
    public static Interval Of(string text, bool ofThreeDigits = false)
    {
        var known = Token().Replace(text, "").Trim();
        Assert.True(known.Length == 0, $"'{known}' in '{text}' is neither number, unit nor sign");
        StepArithmetic arithmetic = new(text, ofThreeDigits);
        var result = arithmetic.Sum();
        Assert.True(arithmetic._at == arithmetic._tokens.Count, $"left over: {string.Join(' ', arithmetic._tokens.Skip(arithmetic._at))}");
        return result;
    }

    /// <summary>A printed result: its number with its unit, without what stands in brackets behind it.</summary>
    public static Interval Result(string text, bool ofThreeDigits = false)
    {
        var bare = InBrackets().Replace(text, "");
        var result = Of(bare, ofThreeDigits);
        return bare.Contains('.', StringComparison.Ordinal) ? result : Widened(bare, result);
    }

    /// <summary>A whole number as a result was rounded as well: to two decimals of its unit.</summary>
    private static Interval Widened(string text, Interval result)
    {
        var unit = Units.OrderByDescending(unit => unit.Key.Length).FirstOrDefault(unit => text.EndsWith(" " + unit.Key, StringComparison.Ordinal));
        var half = 0.005 * (unit.Key is null ? 1 : unit.Value);
        return new(result.Low - half, result.High + half);
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
        var decimals = digits.Contains('.', StringComparison.Ordinal) ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        var half = _isOfThreeDigits && value != 0 && digits.Replace(".", "", StringComparison.Ordinal).TrimStart('0').Length <= 3
            ? 0.5 * Math.Min(1, Math.Pow(10, Math.Floor(Math.Log10(value)) - 2))
            : decimals == 0 ? 0 : 0.5 * Math.Pow(10, -Math.Max(decimals, LeastDecimals));
        Interval number = new(value - half, value + half);
        return Peek() is { } unit && Units.TryGetValue(unit, out var factor) && Next() == unit ? number * new Interval(factor, factor) : number;
    }

    private string? Peek() => _at < _tokens.Count ? _tokens[_at] : null;

    private string Next()
    {
        Assert.True(_at < _tokens.Count, $"the text ends too early: {string.Join(' ', _tokens)}");
        return _tokens[_at++];
    }

    [GeneratedRegex(@"mmol/\(h g\)|mmol/h|g/mol|L/mol|g/mL|mL/g|L/g|the lesser of|and|[0-9][0-9,]*(?:\.[0-9]+)?|mmol|mol|kPa|hPa|Pa|°C|kg|mg|mL|min|[gLKmhR%]|[-+×/^√()]|\s+")]
    private static partial Regex Token();

    [GeneratedRegex(@"\s\([^)]*\)$")]
    private static partial Regex InBrackets();
}
