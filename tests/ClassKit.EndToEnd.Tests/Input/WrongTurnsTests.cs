using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Input;

/// <summary><c>check --wrong-turns</c> on an exercise whose keys are known here by arithmetic.</summary>
public sealed partial class WrongTurnsTests
{
    private static readonly string Exercise = Path.Combine(Checkout.Demo.Lesson, "exercises", "hydration.md");

    private static readonly Dictionary<string, CellValue> Numbers = new Dictionary<string, double>
    {
        ["flour"] = 550,
        ["milk_percent"] = 0.79,
        ["egg_percent"] = 0.13,
        ["milk_water"] = 0.88,
        ["egg_water"] = 0.76,
        ["milk"] = 550 * 0.79,
        ["egg"] = 550 * 0.13,
    }.ToDictionary(number => number.Key, number => CellValue.FromNumber(number.Value));

    /// <summary>By the definition of the baker's percentage.</summary>
    private static readonly Dictionary<string, double> Right = new() { ["milk"] = 550 * 0.79, ["egg"] = 550 * 0.13 };

    [Fact]
    public void Authors_are_shown_what_no_exercise_lists_yet_and_none_of_it_is_right()
    {
        var told = ClassKitRun.Of("check", Exercise, "--wrong-turns").Output;
        var turns = Turn()
            .Matches(told)
            .Select(turn => (Part: turn.Groups[1].Value, Formula: turn.Groups[2].Value, Words: turn.Groups[3].Value))
            .ToList();

        Assert.DoesNotContain("not listed", ClassKitRun.Of("check", Exercise).Output, StringComparison.Ordinal);
        Assert.Contains(turns, turn => turn is { Part: "milk", Formula: "=flour*(1-milk_percent)" or "=flour*(1+milk_percent)" });
        Assert.DoesNotContain(turns, turn =>
            turn is { Part: "milk", Formula: "=flour/milk_percent" } or { Part: "egg", Formula: "=milk*egg_percent" }
        );
        Assert.All(turns, turn => Assert.NotEmpty(turn.Words));
        Assert.All(turns.Where(turn => Right.ContainsKey(turn.Part)), turn =>
        {
            Assert.InRange(turns.Count(other => other.Part == turn.Part), 1, 4);
            var value = new NamedValues(Numbers).Number(CellFormula.Of(turn.Formula).Root);
            Assert.True(
                value is { } number && Math.Abs(number - Right[turn.Part]) > 1,
                $"{turn.Part}: {turn.Formula} gives {value} where {Right[turn.Part]} is right."
            );
        });
        Assert.Equal(Right.Keys, turns.Select(turn => turn.Part).Where(Right.ContainsKey).Distinct());
    }

    [GeneratedRegex("^  (\\w+): (=\\S+) is not listed: (.+)$", RegexOptions.Multiline)]
    private static partial Regex Turn();
}
