using ClassKit.CellFormulas.Evaluating;

namespace ClassKit.Exercises.Guarantees;

/// <summary>The first rule: nothing can be asked of a draw whose keys come to nothing.</summary>
internal sealed class KeysGiveNumbers : VariantRule
{
    public override string Name => "keys give numbers";

    internal override Breach? Check(Candidate candidate) =>
        candidate.WithoutNumber is { } part
            ? new Breach.NoNumber(Name, part, NamedEvaluation.Evaluate(part.Key, candidate.Names).Value)
            : null;
}
