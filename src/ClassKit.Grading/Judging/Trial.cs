using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>One set of inputs put into a student's workbook: the first is what was dealt, the others are fresh.</summary>
/// <param name="Right">The inputs and what the keys make of them.</param>
internal sealed record Trial(Variant Right)
{
    /// <summary>What the student's own earlier answers come to under these inputs, by part id, as far as they are numbers.</summary>
    public Dictionary<string, double> Own { get; } = [];

    /// <summary>What the key gives with the student's own earlier answers in it; where there is none, with the key's own.</summary>
    public double? FollowedThrough(Part part) => KeyValues.Number(part.Key, KeyValues.Names(Right.Givens, Earlier(part)));

    /// <summary>What a misconception gives on right earlier answers.</summary>
    public double? Mistaken(Misconception misconception) =>
        KeyValues.Number(misconception.Formula, KeyValues.Names(Right.Givens, Right.Answers));

    /// <summary>What a misconception gives on the student's own earlier answers.</summary>
    public double? MistakenOnOwn(Part part, Misconception misconception) =>
        KeyValues.Number(misconception.Formula, KeyValues.Names(Right.Givens, Earlier(part)));

    /// <summary>The student's own answers to the parts before <paramref name="part"/>; a missing one is carried on by its key.</summary>
    public Dictionary<string, double> Earlier(Part part)
    {
        var earlier = new Dictionary<string, double>();
        foreach (var before in Right.Exercise.Parts.TakeWhile(other => other != part))
        {
            var value = Own.TryGetValue(before.Id, out var own)
                ? own
                : KeyValues.Number(before.Key, KeyValues.Names(Right.Givens, earlier)) ?? Right.Answers[before.Id];
            earlier[before.Id] = value;
        }
        return earlier;
    }

    /// <summary>What the key gives if some givens keep the values they have in another trial, as typed numbers would.</summary>
    /// <param name="part">The part.</param>
    /// <param name="typed">The givens' ids.</param>
    /// <param name="other">Where their values come from.</param>
    /// <param name="throughout">True if the earlier parts were worked out with the typed numbers as well, as in one long formula.</param>
    public double? Typed(Part part, IReadOnlyCollection<string> typed, Trial other, bool throughout)
    {
        var givens = Right.Givens.ToDictionary(given => given.Key, given => typed.Contains(given.Key) ? other.Right.Givens[given.Key] : given.Value);
        var earlier = throughout ? WorkedOut(part, givens) : Earlier(part);
        return KeyValues.Number(part.Key, KeyValues.Names(givens, earlier));
    }

    /// <summary>What the keys of the parts before <paramref name="part"/> give; those that give no number are left out.</summary>
    private Dictionary<string, double> WorkedOut(Part part, IReadOnlyDictionary<string, decimal> givens)
    {
        var answers = new Dictionary<string, double>();
        foreach (var before in Right.Exercise.Parts.TakeWhile(before => before != part))
        {
            if (KeyValues.Number(before.Key, KeyValues.Names(givens, answers)) is { } value) answers[before.Id] = value;
        }
        return answers;
    }

    /// <summary>What the key gives if the earlier answers are rounded before they are used: so many decimals, two more for percent, which cells hold as fractions.</summary>
    public double? RoundedEarlier(Part part, int decimals)
    {
        var earlier = Earlier(part);
        var rounded = Right.Exercise.Parts.Where(before => earlier.ContainsKey(before.Id))
            .ToDictionary(before => before.Id, before => Decimals.Round(earlier[before.Id], decimals, before.Unit));
        return KeyValues.Number(part.Key, KeyValues.Names(Right.Givens, rounded));
    }
}
