using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>One set of inputs put into a student's workbook: the first is what was dealt, the others are fresh.</summary>
/// <remarks>
/// Parts are judged in order, and what stands before one is asked for many times while it is judged, but worked out once: with the first
/// question the answers before the part are closed. One that came in afterwards would be missing from what later questions are told, so that
/// <see cref="Take(Part, double?, double?)"/> refuses it.
/// </remarks>
/// <param name="inputs">The inputs.</param>
internal sealed class Trial(TrialInputs inputs)
{
    private readonly Remembered<IReadOnlyDictionary<string, double>, NamedValues> _values = new();
    private readonly Remembered<IReadOnlyDictionary<string, double>, IReadOnlyDictionary<string, CellValue>> _names = new();
    private readonly Remembered<Part, Dictionary<string, double>> _heldBefore = new();
    private readonly Remembered<Part, Dictionary<string, double>> _meantBefore = new();
    private readonly Dictionary<string, double> _held = new(inputs.Right.Exercise.Parts.Count);
    private readonly Dictionary<string, double> _meant = new(inputs.Right.Exercise.Parts.Count);

    // How many parts, from the first on, can take no answer any more.
    private int _closed;

    /// <summary>The inputs and what the keys make of them.</summary>
    public Variant Right => inputs.Right;

    /// <summary>
    /// What the student's own answer cells hold under these inputs, by part id, as far as they are numbers: what other cells compute with.
    /// </summary>
    public IReadOnlyDictionary<string, double> Held => _held;

    /// <summary>What the student means by them: a text's number, and 65 % where a percent cell holds 65.</summary>
    public IReadOnlyDictionary<string, double> Meant => _meant;

    /// <summary>Takes in an answer that holds a number and means it.</summary>
    public void Take(Part part, double number) => Take(part, number, number);

    /// <summary>Takes in an answer once it is judged.</summary>
    /// <param name="part">The part.</param>
    /// <param name="held">What its cell holds; null for no number.</param>
    /// <param name="meant">What the student means by it; null for no number.</param>
    /// <exception cref="InvalidOperationException">The answers before a later part were asked for already.</exception>
    public void Take(Part part, double? held, double? meant)
    {
        if (PlaceOf(part) < _closed)
            throw new InvalidOperationException(
                $"The answer to {part.Id} comes too late: what stands before a later part was asked for already."
            );
        if (held is { } number)
            _held[part.Id] = number;
        if (meant is { } other)
            _meant[part.Id] = other;
    }

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
    public IReadOnlyDictionary<string, double> HeldBefore(Part part) => _heldBefore.Of(part, one => Before(one, _held));

    /// <summary>The answers before <paramref name="part"/> as they are meant; a missing one is carried on by its key.</summary>
    public IReadOnlyDictionary<string, double> MeantBefore(Part part) => _meantBefore.Of(part, one => Before(one, _meant));

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

    private int PlaceOf(Part part) => Right.Exercise.Parts.TakeWhile(other => other != part).Count();

    private Dictionary<string, double> Before(Part part, Dictionary<string, double> known)
    {
        _closed = Math.Max(_closed, PlaceOf(part));
        var earlier = new Dictionary<string, double>();
        foreach (var before in Right.Exercise.Parts.TakeWhile(other => other != part))
            earlier[before.Id] = known.TryGetValue(before.Id, out var own)
                ? own
                : KeyValues.Number(before.Key, KeyValues.NamesInPlace(Right.Givens, earlier)) ?? Right.Answers[before.Id];
        return earlier;
    }
}
