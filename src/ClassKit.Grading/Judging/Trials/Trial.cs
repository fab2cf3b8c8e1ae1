using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>One set of inputs put into a student's workbook: the first is what was dealt, the others are fresh.</summary>
/// <param name="inputs">The inputs.</param>
internal sealed class Trial(TrialInputs inputs)
{
    // What is the same for a part, however often it is asked for while the part is judged: by then nothing before it changes any more.
    private readonly Remembered<IReadOnlyDictionary<string, double>, NamedValues> _values = new();
    private readonly Remembered<IReadOnlyDictionary<string, double>, IReadOnlyDictionary<string, CellValue>> _names = new();
    private readonly Remembered<Part, Dictionary<string, double>> _heldBefore = new();
    private readonly Remembered<Part, Dictionary<string, double>> _meantBefore = new();

    /// <summary>The inputs and what the keys make of them.</summary>
    public Variant Right => inputs.Right;

    /// <summary>
    /// What the student's own answer cells hold under these inputs, by part id, as far as they are numbers: what other cells compute with.
    /// </summary>
    public Dictionary<string, double> Held { get; } = new(inputs.Right.Exercise.Parts.Count);

    /// <summary>What the student means by them: a text's number, and 65 % where a percent cell holds 65.</summary>
    public Dictionary<string, double> Meant { get; } = new(inputs.Right.Exercise.Parts.Count);

    /// <summary>Takes in an answer that holds a number and means it.</summary>
    public void Take(Part part, double number) => Held[part.Id] = Meant[part.Id] = number;

    /// <summary>
    /// What a formula of the exercise gives on some answers to earlier parts. Many formulas are tried on the same, so that these must not
    /// change afterwards.
    /// </summary>
    public double? Number(CellFormula formula, IReadOnlyDictionary<string, double> earlier) =>
        _values.Of(earlier, before => new(NamesOn(before))).Number(formula.Root);

    /// <summary>What the names of the exercise stand for on some answers to earlier parts, which must not change afterwards.</summary>
    public IReadOnlyDictionary<string, CellValue> NamesOn(IReadOnlyDictionary<string, double> earlier) =>
        ReferenceEquals(earlier, Right.Answers) ? inputs.Names : _names.Of(earlier, before => KeyValues.NamesInPlace(Right.Givens, before));

    /// <summary>The answers before <paramref name="part"/> as their cells hold them; a missing one is carried on by its key.</summary>
    public IReadOnlyDictionary<string, double> HeldBefore(Part part) => _heldBefore.Of(part, one => Before(one, Held));

    /// <summary>The answers before <paramref name="part"/> as they are meant; a missing one is carried on by its key.</summary>
    public IReadOnlyDictionary<string, double> MeantBefore(Part part) => _meantBefore.Of(part, one => Before(one, Meant));

    /// <summary>
    /// What the keys of the parts before <paramref name="part"/> give for other givens; those that give no number are left out.
    /// </summary>
    public Dictionary<string, double> WorkedOut(Part part, IReadOnlyDictionary<string, decimal> givens)
    {
        var answers = new Dictionary<string, double>();
        foreach (var before in Right.Exercise.Parts.TakeWhile(before => before != part))
        {
            if (KeyValues.Number(before.Key, KeyValues.NamesInPlace(givens, answers)) is { } value)
                answers[before.Id] = value;
        }
        return answers;
    }

    private Dictionary<string, double> Before(Part part, Dictionary<string, double> known)
    {
        var earlier = new Dictionary<string, double>();
        foreach (var before in Right.Exercise.Parts.TakeWhile(other => other != part))
            earlier[before.Id] = known.TryGetValue(before.Id, out var own)
                ? own
                : KeyValues.Number(before.Key, KeyValues.NamesInPlace(Right.Givens, earlier)) ?? Right.Answers[before.Id];
        return earlier;
    }
}
