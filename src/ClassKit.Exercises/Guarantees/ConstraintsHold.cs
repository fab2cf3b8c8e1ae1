using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Keys;

namespace ClassKit.Exercises.Guarantees;

/// <summary>What the author asked of a variant.</summary>
internal sealed class ConstraintsHold : VariantRule
{
    public override string Name => "constraints hold";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var constraint in candidate.Exercise.Constraints)
        {
            if (KeyValues.Holds(constraint, candidate.Names))
                continue;
            var isComparison = NamedEvaluation.Evaluate(constraint, candidate.Names).Value.Kind == CellValueKind.Logical;
            return new Breach.ConstraintBroken(
                Name,
                constraint,
                isComparison,
                [
                    .. candidate
                        .Exercise.Parts.Where(part => constraint.Names.Contains(part.Id, StringComparer.OrdinalIgnoreCase))
                        .Select(part => (part, candidate.Answers[part.Id])),
                ]
            );
        }
        return null;
    }
}
