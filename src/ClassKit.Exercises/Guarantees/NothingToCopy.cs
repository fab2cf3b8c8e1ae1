using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>An answer that already stands on the sheet would be right by copying.</summary>
internal sealed class NothingToCopy : VariantRule
{
    public override string Name => "nothing to copy";

    public override string Promise => "No part is answered by copying a given or an earlier answer, whatever their units.";

    internal override Breach? Check(Candidate candidate)
    {
        // A letter is no number, and an option's number stands nowhere on the sheet.
        foreach (var part in candidate.Exercise.Parts.Where(part => part.Choice is null))
        {
            foreach (var given in candidate.Exercise.Givens)
            {
                if (Passes(candidate, part, (double)candidate.Givens[given.Id], given.Unit))
                    return Found(candidate, part, $"the given `{given.Id}`", GivenText.Of(given, candidate.Givens[given.Id]));
            }
            foreach (var earlier in candidate.Exercise.Parts.TakeWhile(other => other != part).Where(earlier => earlier.Choice is null))
            {
                if (Passes(candidate, part, candidate.Answers[earlier.Id], earlier.Unit))
                    return Found(candidate, part, $"the answer to part `{earlier.Id}`", ResultText.Of(earlier, candidate.Answers[earlier.Id]));
            }
        }
        return null;
    }

    /// <summary>Numbers are compared as they are read: 65 % and 65 g are both 65.</summary>
    private static bool Passes(Candidate candidate, Part part, double standing, string unit) =>
        part.Tolerance.Accepts(candidate.Answers[part.Id], AnswerUnit.Held(part.Unit, AnswerUnit.Shown(unit, standing)));

    private Breach Found(Candidate candidate, Part part, string what, string copied) => new(
        Name, Culprit.Of(part), $"part `{part.Id}` is answered by copying {what}",
        $"{copied} stands on the sheet, and {ResultText.Of(part, candidate.Answers[part.Id])} is asked",
        "Choose ranges in which the two differ, or ask for something else.");
}
