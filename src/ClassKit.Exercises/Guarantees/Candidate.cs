using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A draw of givens on trial, with what the keys and the misconceptions make of it.</summary>
internal sealed class Candidate
{
    private readonly Dictionary<string, double> _answers;
    private readonly Dictionary<Misconception, double?> _mistaken = new(ReferenceEqualityComparer.Instance);

    public Candidate(KeyStructure structure, IReadOnlyDictionary<string, decimal> givens)
    {
        Structure = structure;
        Givens = givens;
        Names = KeyValues.Names(givens, Exercise.Parts.Count);
        _answers = new(Exercise.Parts.Count);
        foreach (var part in Exercise.Parts)
        {
            // A number that stands for no option is none.
            if (KeyValues.Number(part.Key, Names) is not { } value || part.Choice is { } choice && choice.From.Find(value) is null)
            {
                WithoutNumber = part;
                return;
            }
            _answers[part.Id] = value;
            Names[part.Id] = CellValue.FromNumber(value);
        }
    }

    /// <summary>Any values that the ranges allow, each as likely as another.</summary>
    public static Dictionary<string, decimal> DrawGivens(Exercise exercise, SeededDraws random)
    {
        var givens = new Dictionary<string, decimal>(exercise.Givens.Count);
        foreach (var given in exercise.Givens)
            givens[given.Id] = given.ValueAt(random.Below(given.Count));
        return givens;
    }

    public KeyStructure Structure { get; }

    public Exercise Exercise => Structure.Exercise;

    public IReadOnlyDictionary<string, decimal> Givens { get; }

    /// <summary>Givens and answers, as formulas see them.</summary>
    public Dictionary<string, CellValue> Names { get; }

    public IReadOnlyDictionary<string, double> Answers => _answers;

    /// <summary>The first part whose key gives no number; nothing after it was worked out.</summary>
    public Part? WithoutNumber { get; }

    /// <summary>What a misconception gives on right earlier answers; null if that is no number.</summary>
    public double? Mistaken(Misconception misconception)
    {
        if (!_mistaken.TryGetValue(misconception, out var value))
            _mistaken[misconception] = value = KeyValues.Number(misconception.Formula, Names);
        return value;
    }

    /// <summary>The first rule broken, or null.</summary>
    public Breach? FirstBreach(IReadOnlyList<VariantRule> rules)
    {
        foreach (var rule in rules)
        {
            if (rule.Check(this) is { } breach)
                return breach;
        }
        return null;
    }

    public Variant ToVariant() => new(Exercise, Givens, _answers);
}
