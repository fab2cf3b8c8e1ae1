namespace ClassKit.Exercises.Guarantees;

/// <summary>A wrong answer must say which wrong turn it was.</summary>
internal sealed class MisconceptionsToldApart : VariantRule
{
    public override string Name => "misconceptions told apart";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts)
        {
            for (var i = 1; i < part.Misconceptions.Count; i++)
            {
                if (candidate.Mistaken(part.Misconceptions[i]) is not { } value)
                    continue;
                for (var j = 0; j < i; j++)
                {
                    if (candidate.Mistaken(part.Misconceptions[j]) is not { } other || Closeness.Apart(part, value, other))
                        continue;
                    return new Breach.Alike(Name, part, part.Misconceptions[j], part.Misconceptions[i], other, value);
                }
            }
        }
        return null;
    }
}
