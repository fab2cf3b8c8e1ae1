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
            return new(Name, Culprit.Of(constraint), $"the constraint `{constraint.Text}` does not hold", "",
                "Narrow the ranges to values that fit together, or loosen the constraint.");
        }
        return null;
    }
}
