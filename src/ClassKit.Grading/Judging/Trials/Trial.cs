using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>One set of inputs put into a student's workbook: the first is what was dealt, the others are fresh.</summary>
/// <param name="Right">The inputs and what the keys make of them.</param>
internal sealed record Trial(Variant Right)
{
    /// <summary>What the student's own answer cells hold under these inputs, by part id, as far as they are numbers: what other cells compute with.</summary>
    public Dictionary<string, double> Held { get; } = [];

    /// <summary>What the student means by them: a text's number, and 65 % where a percent cell holds 65.</summary>
    public Dictionary<string, double> Meant { get; } = [];

    /// <summary>What a formula of the exercise gives on some answers to earlier parts.</summary>
    public double? Number(CellFormulas.Formulas.CellFormula formula, IEnumerable<KeyValuePair<string, double>> earlier) =>
        KeyValues.Number(formula, KeyValues.Names(Right.Givens, earlier));

    /// <summary>The answers before <paramref name="part"/> as their cells hold them; a missing one is carried on by its key.</summary>
    public Dictionary<string, double> HeldBefore(Part part) => Before(part, Held);

    /// <summary>The answers before <paramref name="part"/> as they are meant; a missing one is carried on by its key.</summary>
    public Dictionary<string, double> MeantBefore(Part part) => Before(part, Meant);

    /// <summary>What the keys of the parts before <paramref name="part"/> give for other givens; those that give no number are left out.</summary>
    public Dictionary<string, double> WorkedOut(Part part, IReadOnlyDictionary<string, decimal> givens)
    {
        var answers = new Dictionary<string, double>();
        foreach (var before in Right.Exercise.Parts.TakeWhile(before => before != part))
        {
            if (KeyValues.Number(before.Key, KeyValues.Names(givens, answers)) is { } value) answers[before.Id] = value;
        }
        return answers;
    }

    private Dictionary<string, double> Before(Part part, Dictionary<string, double> known)
    {
        var earlier = new Dictionary<string, double>();
        foreach (var before in Right.Exercise.Parts.TakeWhile(other => other != part))
            earlier[before.Id] = known.TryGetValue(before.Id, out var own) ? own : Number(before.Key, earlier) ?? Right.Answers[before.Id];
        return earlier;
    }
}
