using System.Globalization;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Looks for the one small thing that makes a wrong number right. A formula must show it under all inputs.</summary>
internal sealed class SlipFinder
{
    private static readonly int[] Powers = [10, 100, 1000];
    private const int MostDecimals = 3;

    private readonly Part _part;
    private readonly IReadOnlyList<Trial> _trials;

    public SlipFinder(Part part, IReadOnlyList<Trial> trials)
    {
        _part = part;
        _trials = trials;
    }

    /// <summary>The slip, or null if there is none that we know.</summary>
    public Slip? Find(Reading reading) => OtherUnit(reading) ?? Power(reading) ?? RoundedAnswer(reading) ?? RoundedOnTheWay(reading);

    private Slip? OtherUnit(Reading reading) =>
        AnswerUnits.Others(_part.Unit).FirstOrDefault(other => IsRight(reading, value => AnswerUnits.Convert(value, other, _part.Unit))) is { } unit
            ? new(SlipKind.Unit, $"Your answer is right in {unit}; this cell asks for {_part.Unit}.")
            : null;

    private Slip? Power(Reading reading)
    {
        foreach (var power in Powers)
        {
            if (IsRight(reading, value => value / power)) return Scaled($"{power.ToString(CultureInfo.InvariantCulture)} times");
            if (IsRight(reading, value => value * power)) return Scaled($"1/{power.ToString(CultureInfo.InvariantCulture)} of");
        }
        return null;
    }

    private static Slip Scaled(string factor) =>
        new(SlipKind.Unit, $"Your answer is {factor} what it should be: check the units and the percent sign before the method.");

    private Slip? RoundedAnswer(Reading reading) => FirstDecimals(decimals =>
        reading.Agrees((trial, value) => Expected(trial).Any(right => IsSame(value, Decimals.Round(right, decimals, _part.Unit))))) is { } found
        ? new(SlipKind.Rounding, $"The method is right, but the answer is rounded to {Places(found)}, which is more than this part allows. Keep all digits in the cell and let its format do the rounding.")
        : null;

    private Slip? RoundedOnTheWay(Reading reading) => FirstDecimals(decimals =>
        reading.Agrees((trial, value) => _trials[trial].RoundedEarlier(_part, decimals) is { } rounded && _part.Tolerance.Accepts(rounded, value))) is { } found
        ? new(SlipKind.Rounding, $"The method is right, but an earlier answer was rounded to {Places(found)} before it was used, and that carries through. Point to its cell, which holds all digits, and round at the end.")
        : null;

    private bool IsRight(Reading reading, Func<double, double> mended) =>
        reading.Agrees((trial, value) => Expected(trial).Any(right => _part.Tolerance.Accepts(right, mended(value))));

    /// <summary>The key's answer, and the one that carries on the student's own earlier answers.</summary>
    private IEnumerable<double> Expected(int trial)
    {
        yield return _trials[trial].Right.Answers[_part.Id];
        if (_trials[trial].FollowedThrough(_part) is { } followed) yield return followed;
    }

    private static int? FirstDecimals(Func<int, bool> fits)
    {
        for (var decimals = MostDecimals; decimals >= 0; decimals--)
        {
            if (fits(decimals)) return decimals;
        }
        return null;
    }

    private string Places(int decimals) => (decimals, AnswerUnit.IsPercent(_part.Unit)) switch
    {
        (0, true) => "whole percent",
        (0, false) => "a whole number",
        (1, _) => "one decimal",
        (2, _) => "two decimals",
        _ => "three decimals",
    };

    private static bool IsSame(double value, double other) => Math.Abs(value - other) <= 1e-9 * Math.Max(1, Math.Abs(other));
}
