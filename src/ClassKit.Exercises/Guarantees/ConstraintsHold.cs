using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>What the author asked of a variant.</summary>
internal sealed class ConstraintsHold : VariantRule
{
    public override string Name => "constraints hold";

    public override string Promise => "Every constraint that the author wrote is TRUE.";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var constraint in candidate.Exercise.Constraints)
        {
            if (KeyValues.Holds(constraint, candidate.Names)) continue;
            var isComparison = NamedEvaluation.Evaluate(constraint, candidate.Names).Value.Kind == CellValueKind.Logical;
            return new(
                Name, Culprit.Of(constraint),
                isComparison ? $"the constraint `{constraint.Text}` does not hold" : $"the constraint `{constraint.Text}` is neither true nor false",
                string.Join(", ", candidate.Exercise.Parts.Where(part => constraint.Names.Contains(part.Id, StringComparer.OrdinalIgnoreCase)).Select(part => $"`{part.Id}` is {ResultText.Of(part, candidate.Answers[part.Id])}")),
                isComparison ? "Narrow the ranges to values that fit together, or loosen the constraint." : "Write a comparison, such as `=water<600`.");
        }
        return null;
    }
}
