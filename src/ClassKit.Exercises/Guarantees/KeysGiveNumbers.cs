using ClassKit.CellFormulas.Evaluating;

namespace ClassKit.Exercises.Guarantees;

/// <summary>The first rule: nothing can be asked of a draw whose keys come to nothing.</summary>
internal sealed class KeysGiveNumbers : VariantRule
{
    public override string Name => "keys give numbers";

    public override string Promise => "Every part has one answer, and it is a number or, where something is chosen, one of the options.";

    internal override Breach? Check(Candidate candidate) => NoNumber(candidate) ?? NoOption(candidate);

    private Breach? NoNumber(Candidate candidate) => candidate.WithoutNumber is { } part
        ? new(Name, Culprit.Of(part), $"the key of part `{part.Id}`, `{part.Key.Text}`, gives no number",
            $"it gives {NamedEvaluation.Evaluate(part.Key, candidate.Names).Value}", "Change the key or the ranges, or add a constraint that keeps such numbers out.")
        : null;

    private Breach? NoOption(Candidate candidate) => candidate.Exercise.Parts.FirstOrDefault(part => part.Choice is { } choice && choice.From.Find(candidate.Answers[part.Id]) is null) is { } part
        ? new(Name, Culprit.Of(part), $"the key of part `{part.Id}`, `{part.Key.Text}`, names no option", $"it gives {candidate.Answers[part.Id]}", "Let every branch of the key end in the id of an option.")
        : null;
}
