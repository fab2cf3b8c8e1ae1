using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Identity;

/// <summary>Digests what was dealt, field by field. Every field goes in with its length, so that no two deals read alike.</summary>
internal sealed class DealDigest
{
    /// <summary>How variants are drawn and laid out; raised when the same inputs give other numbers or places.</summary>
    private const int Dealing = 1;

    private readonly StringBuilder _text = new();

    public DealDigest() => Add(Dealing);

    /// <summary>The digest of one exercise by itself.</summary>
    public static string Of(Exercise exercise)
    {
        var digest = new DealDigest();
        digest.Add(exercise);
        return digest.Finish();
    }

    public void Add(Exercise exercise)
    {
        Add(exercise.Id, exercise.Title, exercise.Skill, exercise.Level, exercise.Minutes, exercise.Source, exercise.Problem);
        Add(exercise.Givens.Count);
        foreach (var given in exercise.Givens)
            Add(given.Id, given.Label, given.Unit.Sign, given.From, given.To, given.Step);
        Add(exercise.Constraints.Count);
        foreach (var constraint in exercise.Constraints)
            Add(constraint);
        Add(exercise.Steps.Count);
        foreach (var step in exercise.Steps)
            Add(step.Id, step.What, step.Key, step.Unit.Sign);
        Add(exercise.Parts.Count);
        foreach (var part in exercise.Parts)
            Add(part);
        Add(exercise.Hints.Count);
        foreach (var hint in exercise.Hints)
            Add(hint);
    }

    /// <summary>Takes up fields of numbers, texts, formulas and words for kinds.</summary>
    public void Add(params ReadOnlySpan<object?> fields)
    {
        foreach (var field in fields)
        {
            var text = field switch
            {
                null => "",
                // The scale of a decimal is how it was written, and says nothing.
                decimal number => (number / 1.000000000000000000000000000000000m).ToString(CultureInfo.InvariantCulture),
                CellFormula formula => formula.Text,
                IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
                _ => field.ToString() ?? "",
            };
            _text.Append(text.Length).Append(':').Append(text);
        }
    }

    public string Finish() => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(_text.ToString())));

    private void Add(Part part)
    {
        Add(part.Id, part.Ask, part.Key, part.Written, part.Unit.Sign, part.Points, part.FormulaAsked);
        Add(part.Tolerance.Amount, part.Tolerance.IsRelative, part.Tolerance.IsRounding, part.Misconceptions.Count);
        foreach (var misconception in part.Misconceptions)
            Add(misconception.Id, misconception.Formula, misconception.Written, misconception.Words);
        if (part.InWords is { } words)
            Add(words.LookFor);
        if (part.Choice is not { From: var list, Why: var why })
            return;
        Add(list.Id, list.Kind, why, list.Options.Count);
        foreach (var option in list.Options)
            Add(option.Id, option.Words);
        if (part.Choice.Drawing is not { } drawing)
            return;
        Add(drawing.Thing, drawing.States.Count);
        foreach (var state in drawing.States)
            Add(state.Id, state.Words);
    }
}
