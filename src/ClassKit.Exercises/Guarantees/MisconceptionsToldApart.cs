using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A wrong answer must say which wrong turn it was.</summary>
internal sealed class MisconceptionsToldApart : VariantRule
{
    public override string Name => "misconceptions told apart";

    public override string Promise => "No two misconceptions of a part come so close that an answer could be either.";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts)
        {
            for (var i = 1; i < part.Misconceptions.Count; i++)
            {
                if (candidate.Mistaken(part.Misconceptions[i]) is not { } value) continue;
                for (var j = 0; j < i; j++)
                {
                    if (candidate.Mistaken(part.Misconceptions[j]) is not { } other || Closeness.Apart(part, value, other)) continue;
                    return new(Name, Culprit.Of(part, part.Misconceptions[i]),
                        $"the misconceptions `{part.Misconceptions[j].Id}` and `{part.Misconceptions[i].Id}` of part `{part.Id}` cannot be told apart",
                        $"they give {ResultText.Of(part, other)} and {ResultText.Of(part, value)}, and the tolerance is {Closeness.Room(part, value)}",
                        "Choose ranges in which they differ, narrow the tolerance, or keep only one of them.");
                }
            }
        }
        return null;
    }
}
