using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>What an answer comes to under every trial, the dealt inputs first, on some ground.</summary>
/// <param name="Values">A number a trial; null where the cell gives none.</param>
/// <param name="Ground">What it stands on.</param>
internal sealed record Behaviour(IReadOnlyList<double?> Values, Ground Ground)
{
    /// <summary>True if the answer follows the inputs at all. One that does not shows no method, whatever it comes to.</summary>
    public bool Varies => Values.Any(value => value is { } one && Values[0] is { } first && !Near.Computed.Same(first, one));

    /// <summary>True if the answer does what the key does, within a tolerance, under all trials.</summary>
    public bool IsRight(Tolerance tolerance) =>
        Throughout(
            (trial, value) =>
                Ground.Expected[trial] is { } expected && tolerance.Shrunk(Ground.Allowance?[trial] ?? 1).Accepts(expected, value)
        );

    /// <summary>True if it does so to the last digit.</summary>
    public bool IsExact => Throughout((trial, value) => Ground.Expected[trial] is { } expected && Near.Computed.Same(expected, value));

    /// <summary>True if the answer is a number under every trial and agrees each time.</summary>
    public bool Throughout(Func<int, double, bool> agrees)
    {
        for (var trial = 0; trial < Values.Count; trial++)
        {
            if (Values[trial] is not { } value || !agrees(trial, value))
                return false;
        }
        return true;
    }
}
