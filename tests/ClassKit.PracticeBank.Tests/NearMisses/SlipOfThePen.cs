using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Exercises.Authoring;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// Slips that people make when they write a formula down, made on its text and not on its tree: nothing here knows how the grader looks for
/// them.
/// </summary>
/// <param name="Kind">What kind, for messages.</param>
/// <param name="Formula">The wrong formula over the exercise's names, with its <c>=</c>.</param>
internal sealed partial record SlipOfThePen(string Kind, string Formula)
{
    private static readonly Dictionary<string, string[]> HalfRemembered = new()
    {
        ["32"] = ["30"],
        ["1.8"] = ["2"],
        ["100"] = ["1", "10"],
        ["1000"] = ["100"],
        ["273.15"] = ["237"],
        ["16"] = ["12", "10"],
        ["3"] = ["2"],
        ["4"] = ["3"],
        ["2"] = ["3"],
    };

    private static readonly Dictionary<string, string[]> OtherUnits = new()
    {
        ["g"] = ["({0}/1000)"],
        ["kg"] = ["({0}*1000)"],
        ["ml"] = ["({0}/1000)"],
        ["l"] = ["({0}*1000)"],
        ["min"] = ["({0}/60)"],
        ["h"] = ["({0}*60)"],
        ["°C"] = ["({0}*1.8+32)"],
        ["°F"] = ["(({0}-32)/1.8)"],
        ["%"] = ["({0}*100)"],
        ["oz"] = ["({0}/16)"],
        ["lb"] = ["({0}*16)"],
    };

    /// <summary>Every slip of the kinds that instructors name, in a key without functions of choice.</summary>
    public static IEnumerable<SlipOfThePen> Of(Exercise exercise, Part part)
    {
        var key = part.Key.ToString()[1..];
        var sheet = exercise
            .Givens.Select(given => (given.Id, given.Unit))
            .Concat(exercise.Parts.TakeWhile(other => other != part).Where(other => other.IsNumber).Select(other => (other.Id, other.Unit)))
            .ToList();
        return new[]
        {
            Each(key, Operator(), "another operation", at => "+-*/".Where(other => other != at.Value[0]).Select(other => other.ToString())),
            Each(key, Difference(), "turned round", at =>
                [$"{at.Groups[1].Value}{at.Groups[4].Value}{at.Groups[3].Value}{at.Groups[2].Value}{at.Groups[5].Value}"]
            ),
            Each(key, Term(), "left out", _ => [""]),
            Each(key, First(), "left out", at => [at.Groups[1].Value]),
            Each(key, Term(), "twice", at => [at.Value + at.Value]),
            Each(key, OneAnd(), "share for rest", at => [at.Value.Replace('-', '+'), at.Value.Replace('+', '-'), at.Groups[1].Value]),
            Each(key, Name(), "share for rest", at =>
                UnitOf(at.Value) == "%" && !IsBehindOne(key, at.Index) ? [$"(1-{at.Value})", $"(1+{at.Value})"] : []
            ),
            Each(key, Name(), "another cell", at => sheet.Where(other => other.Id != at.Value).Select(other => other.Id)),
            Each(key, DividedOut(), "added where divided out", at => [$"*(1+{at.Groups[1].Value})"]),
            Each(key, PutOn(), "divided where put on", at => [$"/(1-{at.Groups[1].Value})"]),
            Each(key, Name(), "another unit", at =>
                OtherUnits
                    .GetValueOrDefault(UnitOf(at.Value) ?? "", [])
                    .Select(other => string.Format(CultureInfo.InvariantCulture, other, at.Value))
            ),
            Each(key, Number(), "half remembered", at => HalfRemembered.GetValueOrDefault(at.Value, [])),
            Each(key, Bracket(), "without brackets", at => [at.Groups[1].Value]),
            Each(key, Bracket(), "rounded between", at =>
                at.Index > 0 && char.IsLetter(key[at.Index - 1]) || at.Length == key.Length
                    ? []
                    : [$"ROUND({at.Groups[1].Value},0)", $"ROUND({at.Groups[1].Value},1)"]
            ),
            [new("upside down", $"1/({key})"), new("other sign", $"-({key})"), new("half", $"({key})/2"), new("double", $"({key})*2")],
        }
            .SelectMany(slips => slips)
            .Select(slip => slip with { Formula = "=" + slip.Formula });

        string? UnitOf(string name) => sheet.FirstOrDefault(one => one.Id == name).Unit?.Sign;
    }

    /// <summary>Slips that the grader's edits do not have.</summary>
    public static IEnumerable<SlipOfThePen> HeldOut(Exercise exercise, Part part)
    {
        var key = part.Key.ToString()[1..];
        var drawn = exercise.Givens.Where(given => !given.IsConstant).Select(given => given.Id).ToList();
        return new[]
        {
            Each(key, Name(), "squared", at => [$"{at.Value}^2"]),
            Each(key, Name(), "its root", at => [$"SQRT(ABS({at.Value}))"]),
            Each(key, Name(), "the mean with another", at =>
                drawn.Where(other => other != at.Value).Select(other => $"(({at.Value}+{other})/2)")
            ),
            Each(key, Name(), "the larger", at => drawn.Where(other => other != at.Value).Select(other => $"({at.Value}+0.3*{other})")),
            Each(key, Name(), "a tenth more", at => [$"(1.1*{at.Value})"]),
            Each(key, Name(), "a third", at => [$"({at.Value}/3)"]),
            Each(key, Name(), "a dozen", at => [$"({at.Value}*12)"]),
            Each(key, Name(), "ten less", at => [$"({at.Value}-10)"]),
            Each(key, Name(), "the larger of two", at =>
                drawn.Where(other => other != at.Value).Select(other => $"MAX({at.Value},{other})")
            ),
            Each(key, Name(), "by the ratio of others", at =>
                drawn
                    .Where(other => other != at.Value)
                    .Zip(drawn.Where(other => other != at.Value).Skip(1), (one, other) => $"({at.Value}*{one}/{other})")
            ),
            [
                new("one more", $"({key})+1"),
                new("three halves", $"({key})*1.5"),
                new("a seventh off", $"({key})*6/7"),
                new("cubed", $"({key})^3/100"),
            ],
        }
            .SelectMany(slips => slips)
            .Select(slip => slip with { Formula = "=" + slip.Formula });
    }

    private static IEnumerable<SlipOfThePen> Each(string key, Regex what, string kind, Func<Match, IEnumerable<string>> instead) =>
        what.Matches(key)
            .SelectMany(at => instead(at).Select(other => new SlipOfThePen(kind, key[..at.Index] + other + key[(at.Index + at.Length)..])));

    private static bool IsBehindOne(string key, int at) => at >= 2 && key[at - 2] == '1' && key[at - 1] is '+' or '-';

    [GeneratedRegex(@"(?<=[\w)])[-+*/](?=[\w(])")]
    private static partial Regex Operator();

    [GeneratedRegex(@"(^|\()([\w.]+)([-/])([\w.]+)($|\))")]
    private static partial Regex Difference();

    [GeneratedRegex(@"(?<=[\w)])(?:[-+](?:[\w.]+|\([^()]*\))(?=$|[-+)])|[*/](?:[\w.]+(?![\w.(])|\([^()]*\)))")]
    private static partial Regex Term();

    [GeneratedRegex(@"(^|\()(?:[a-z_]\w*|\([^()]*\))[-+*/](?=[\w(])")]
    private static partial Regex First();

    [GeneratedRegex(@"(?<![\w.])1[-+](\w+)")]
    private static partial Regex OneAnd();

    [GeneratedRegex(@"\b[a-z_]\w*\b")]
    private static partial Regex Name();

    [GeneratedRegex(@"/\(1-(\w+)\)")]
    private static partial Regex DividedOut();

    [GeneratedRegex(@"\*\(1\+(\w+)\)")]
    private static partial Regex PutOn();

    [GeneratedRegex(@"(?<![\w.])\d+(\.\d+)?(?![\w.])")]
    private static partial Regex Number();

    [GeneratedRegex(@"\(([^()]*)\)")]
    private static partial Regex Bracket();
}
