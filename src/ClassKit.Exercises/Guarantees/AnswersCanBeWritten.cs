using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A person writes an answer with a few decimals: the tolerance must have room for that, whichever way a tie goes.</summary>
internal sealed class AnswersCanBeWritten : VariantRule
{
    public override string Name => "answers can be written down";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(part => part.IsNumber))
        {
            var right = candidate.Answers[part.Id];
            var (down, up) = ResultText.Neighbours(part, right);
            if (part.Tolerance.Accepts(right, down) && part.Tolerance.Accepts(right, up))
                continue;
            return new Breach.NotWritable(Name, part, right);
        }
        return null;
    }
}
