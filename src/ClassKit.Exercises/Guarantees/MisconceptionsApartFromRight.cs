namespace ClassKit.Exercises.Guarantees;

/// <summary>A wrong method is never accepted as right, nor the right answer taken for it: their tolerances do not meet.</summary>
internal sealed class MisconceptionsApartFromRight : VariantRule
{
    public override string Name => "misconceptions apart from the right answer";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts)
        {
            var right = candidate.Answers[part.Id];
            foreach (var misconception in part.Misconceptions)
            {
                if (candidate.Mistaken(misconception) is not { } wrong || Closeness.Apart(part, right, wrong))
                    continue;
                return new Breach.CloseToRight(Name, part, misconception, wrong, right);
            }
        }
        return null;
    }
}
