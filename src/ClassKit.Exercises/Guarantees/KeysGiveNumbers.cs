using ClassKit.CellFormulas.Evaluating;

namespace ClassKit.Exercises.Guarantees;

/// <summary>The first rule: nothing can be asked of a draw whose keys come to nothing.</summary>
internal sealed class KeysGiveNumbers : VariantRule
{
    public override string Name => "keys give numbers";

    public override string Promise => "Every part has one answer, and it is a number.";

    internal override Breach? Check(Candidate candidate) => candidate.WithoutNumber is { } part
        ? new(Name, Culprit.Of(part), $"the key of part `{part.Id}`, `{part.Key.Text}`, gives no number",
            $"it gives {NamedEvaluation.Evaluate(part.Key, candidate.Names).Value}", "Change the key or the ranges, or add a constraint that keeps such numbers out.")
        : null;
}
