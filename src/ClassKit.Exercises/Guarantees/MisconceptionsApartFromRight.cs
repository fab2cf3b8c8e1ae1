using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A wrong method is never accepted as right, nor the right answer taken for it: their tolerances do not meet.</summary>
internal sealed class MisconceptionsApartFromRight : VariantRule
{
    public override string Name => "misconceptions apart from the right answer";

    public override string Promise => "No misconception comes so close to the right answer that one could be taken for the other.";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts)
        {
            var right = candidate.Answers[part.Id];
            foreach (var misconception in part.Misconceptions)
            {
                if (candidate.Mistaken(misconception) is not { } wrong || Closeness.Apart(part, right, wrong)) continue;
                return new(Name, Culprit.Of(part, misconception),
                    $"the misconception `{misconception.Id}` of part `{part.Id}` comes too close to the right answer",
                    $"it gives {ResultText.Of(part, wrong)}, and {ResultText.Of(part, right)} is right within {Closeness.Room(part, right)}",
                    "Choose ranges in which the wrong method matters, narrow the tolerance, or drop the misconception.");
            }
        }
        return null;
    }
}
