using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;

namespace ClassKit.Exercises.Guarantees;

/// <summary>
/// Where a key rounds or chooses, the last bits of a double must not decide: another order of the same steps may give other bits.
/// </summary>
internal sealed class NoTieNearby : VariantRule
{
    /// <summary>Far above what any order of a few operations changes, far below what a scale shows.</summary>
    private const double Hair = 1e-9;

    /// <summary>
    /// How near to a half an answer may not come that is judged by how it rounds, in steps: nearer, a sound method with a rounded factor
    /// goes wrong.
    /// </summary>
    private const double TieWidth = 0.02;

    public override string Name => "no tie nearby";

    internal override Breach? Check(Candidate candidate) => (Breach?)AtTie(candidate) ?? AtJump(candidate);

    private Breach.AtHalf? AtTie(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(part => part.Tolerance.IsRounding))
        {
            var steps = Math.Abs(candidate.Answers[part.Id]) / part.Tolerance.Amount;
            if (Math.Abs(steps - Math.Floor(steps) - 0.5) >= TieWidth)
                continue;
            return new Breach.AtHalf(Name, part, candidate.Answers[part.Id]);
        }
        return null;
    }

    private Breach.AtStep? AtJump(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(candidate.Structure.MayJump))
        {
            var right = candidate.Answers[part.Id];
            foreach (var given in candidate.Exercise.Givens.Where(given => candidate.Structure.Uses(part, given.Id)))
            {
                if (
                    Moved(candidate, part, given, 1 + Hair) is { } up
                    && part.Tolerance.Accepts(right, up)
                    && Moved(candidate, part, given, 1 - Hair) is { } down
                    && part.Tolerance.Accepts(right, down)
                )
                    continue;
                return new Breach.AtStep(Name, part, given, right);
            }
        }
        return null;
    }

    private static double? Moved(Candidate candidate, Part part, Given moved, double factor)
    {
        var names = new Dictionary<string, CellValue>(candidate.Names, StringComparer.OrdinalIgnoreCase)
        {
            [moved.Id] = CellValue.FromNumber((double)candidate.Givens[moved.Id] * factor),
        };
        foreach (
            var before in candidate
                .Exercise.Parts.TakeWhile(other => other != part)
                .Where(before => candidate.Structure.Uses(part, before.Id))
        )
        {
            if (KeyValues.Number(before.Key, names) is not { } value)
                return null;
            names[before.Id] = CellValue.FromNumber(value);
        }
        return KeyValues.Number(part.Key, names);
    }
}
