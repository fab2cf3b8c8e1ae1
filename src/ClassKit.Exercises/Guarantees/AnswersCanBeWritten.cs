using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A person writes an answer with a few decimals: the tolerance must have room for that, whichever way a tie goes.</summary>
internal sealed class AnswersCanBeWritten : VariantRule
{
    public override string Name => "answers can be written down";

    public override string Promise => "Every answer is still right when it is rounded as the answer key prints it; a tie may go either way.";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(part => part.Choice is null))
        {
            var right = candidate.Answers[part.Id];
            var (down, up) = ResultText.Neighbours(part, right);
            if (part.Tolerance.Accepts(right, down) && part.Tolerance.Accepts(right, up)) continue;
            return new(Name, Culprit.Of(part), $"the answer to part `{part.Id}` cannot be written down",
                $"rounded to {ResultText.Of(part, right)} it is out of tolerance, which is {Closeness.Room(part, right)}",
                "Widen the tolerance to what a person can write and a scale can show.");
        }
        return null;
    }
}
