using System.Collections.Concurrent;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Says whether anything that is listed or known, a misconception, another unit, a power of ten or a rounding, gives what a formula gives
/// for some inputs on which all before it is right. What gives it nowhere cannot give it under all trials. Fresh inputs serve the whole
/// class, so that it is found once for all who wrote the same. Can be used from several threads.
/// </summary>
internal sealed class Explanations
{
    /// <summary>In a class of thousands who write no two formulas alike, what comes later is worked out each time.</summary>
    private const int Most = 20_000;

    private readonly ConcurrentDictionary<(TrialInputs Inputs, string Part, string Formula), bool> _known = new();
    private readonly ConcurrentDictionary<(TrialInputs Inputs, string Part), double[]> _rounded = new();

    /// <summary>True if anything may explain the formula there.</summary>
    public bool Any(TrialInputs inputs, Part part, CellFormula formula)
    {
        if (_known.TryGetValue((inputs, part.Id, formula.Text), out var known))
            return known;
        var any = inputs.Number(formula) is not { } value || CellReadings.Of(part, value).Any(reading => Explains(inputs, part, reading));
        if (_known.Count < Most)
            _known.TryAdd((inputs, part.Id, formula.Text), any);
        return any;
    }

    private bool Explains(TrialInputs inputs, Part part, double value)
    {
        var right = inputs.Right.Answers[part.Id];
        return part.Misconceptions.Any(misconception =>
                inputs.Number(misconception.Formula) is { } mistaken && part.Tolerance.Accepts(mistaken, value)
            )
            || SlipFinder.IsInOtherUnit(part, right, value)
            || RoundingFinder.IsRounded(right, value)
            || _rounded
                .GetOrAdd((inputs, part.Id), _ => [.. RoundingFinder.FromRounded(part, inputs.Right)])
                .Any(rounded => Near.Computed.Same(rounded, value));
    }
}
