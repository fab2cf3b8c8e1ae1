using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging.Slips;

/// <summary>
/// Looks for the one small thing that makes a wrong number right. A formula must show it under all inputs, a typed number on those dealt.
/// </summary>
internal sealed class SlipFinder
{
    private static readonly int[] Powers = [10, 100, 1000];
    private const int MostDecimals = 3;

    /// <summary>A rounded number keeps at least so much of the answer that it is no guess: two significant digits.</summary>
    private const double MostRoundedAway = 0.05;

    private readonly Part _part;
    private readonly Trial _dealt;

    private readonly JudgeRules _rules;

    /// <param name="part">The part.</param>
    /// <param name="dealt">The trial with the student's own numbers.</param>
    /// <param name="rules">The judge's.</param>
    public SlipFinder(Part part, Trial dealt, JudgeRules rules) => (_part, _dealt, _rules) = (part, dealt, rules);

    /// <summary>The slip in what a formula does on some ground, or null if there is none that we know.</summary>
    public Slip? Find(Behaviour behaviour) =>
        behaviour.Varies
            ? Units(_part, mended => behaviour.Throughout((trial, value) => Accepts(behaviour.Ground.Expected[trial], mended(value))))
            : null;

    /// <summary>True if a number is right in another unit, or off by a power of ten.</summary>
    public static bool IsInOtherUnit(Part part, double right, double value) =>
        Units(part, mended => part.Tolerance.Accepts(right, mended(value))) is not null;

    /// <summary>The slip in a typed number, or null if there is none that we know.</summary>
    /// <param name="value">The number, which must be one that says how somebody came to it.</param>
    /// <param name="expected">What would be right: the key's answer, and those on own earlier answers.</param>
    public Slip? Find(double value, IReadOnlyList<double?> expected) =>
        Units(_part, mended => expected.Any(right => Accepts(right, mended(value))))
        ?? RoundedAnswer(value, expected)
        ?? RoundedOnTheWay(value);

    private static Slip? Units(Part part, Func<Func<double, double>, bool> isRight)
    {
        if (WrittenUnits.Others(part.Unit).FirstOrDefault(other => isRight(other.Into.Of)) is { Unit: { } unit })
            return new(SlipKind.Unit, new AnswerFinding.OtherUnit(unit.Sign));
        foreach (var power in Powers)
        {
            if (isRight(value => value / power))
                return new(SlipKind.Unit, new AnswerFinding.OffByTens(power, IsTooLarge: true));
            if (isRight(value => value * power))
                return new(SlipKind.Unit, new AnswerFinding.OffByTens(power, IsTooLarge: false));
        }
        return null;
    }

    private Slip? RoundedAnswer(double value, IReadOnlyList<double?> expected) =>
        FirstDecimals(decimals =>
            expected.Any(right =>
                right is { } number
                && !(_rules.CarriesExactly && _part.Tolerance.Accepts(number, value))
                && Math.Abs(value - number) <= MostRoundedAway * Math.Abs(number)
                && Near.Written.Same(value, Decimals.Round(number, decimals, _part.Unit))
            )
        )
            is { } found
            ? new(SlipKind.Rounding, new AnswerFinding.TypedRounded(found))
            : null;

    private Slip? RoundedOnTheWay(double value) =>
        // What follows from an earlier answer as it stands is not rounded.
        _rules.CarriesExactly && Accepts(_dealt.Number(_part.Key, _dealt.MeantBefore(_part)), value)
            ? null
        : FirstDecimals(decimals =>
            Accepts(OnRounded(decimals), value)
            && (!_rules.ReadsRounding || (OnRounded(decimals) is { } given && TypedDigits.AreThoseOf(given, value)))
        )
            is { } found
            ? new(SlipKind.Rounding, new AnswerFinding.TypedFromRounded(found))
        : null;

    private double? OnRounded(int decimals)
    {
        var earlier = _dealt.MeantBefore(_part);
        return KeyValues.Number(
            _part.Key,
            KeyValues.Names(
                _dealt.Right.Givens,
                _dealt
                    .Right.Exercise.Parts.Where(before => earlier.ContainsKey(before.Id))
                    .Select(before => KeyValuePair.Create(before.Id, Decimals.Round(earlier[before.Id], decimals, before.Unit)))
            )
        );
    }

    private bool Accepts(double? expected, double value) => expected is { } right && _part.Tolerance.Accepts(right, value);

    private static int? FirstDecimals(Func<int, bool> fits)
    {
        for (var decimals = MostDecimals; decimals >= 0; decimals--)
        {
            if (fits(decimals))
                return decimals;
        }
        return null;
    }
}
