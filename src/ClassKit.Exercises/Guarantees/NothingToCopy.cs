using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Guarantees;

/// <summary>An answer that already stands on the sheet would be right by copying.</summary>
internal sealed class NothingToCopy : VariantRule
{
    public override string Name => "nothing to copy";

    internal override Breach? Check(Candidate candidate)
    {
        // A letter is no number, and an option's number stands nowhere on the sheet.
        foreach (var part in candidate.Exercise.Parts.Where(part => part.IsNumber))
        {
            foreach (var given in candidate.Exercise.Givens)
            {
                if (Passes(candidate, part, (double)candidate.Givens[given.Id], given.Unit))
                    return new Breach.CopiesGiven(Name, part, given, candidate.Givens[given.Id], candidate.Answers[part.Id]);
            }
            foreach (var earlier in candidate.Exercise.Parts.TakeWhile(other => other != part).Where(earlier => earlier.IsNumber))
            {
                if (Passes(candidate, part, candidate.Answers[earlier.Id], earlier.Unit))
                    return new Breach.CopiesAnswer(Name, part, earlier, candidate.Answers[earlier.Id], candidate.Answers[part.Id]);
            }
        }
        return null;
    }

    /// <summary>Numbers are compared as they are read: 65 % and 65 g are both 65.</summary>
    private static bool Passes(Candidate candidate, Part part, double standing, Unit unit) =>
        part.Tolerance.Accepts(candidate.Answers[part.Id], part.Unit.Held(unit.Shown(standing)));
}
