using System.Globalization;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>Where a key rounds or chooses, the last bits of a double must not decide: another order of the same steps may give other bits.</summary>
internal sealed class NoTieNearby : VariantRule
{
    /// <summary>Far above what any order of a few operations changes, far below what a scale shows.</summary>
    private const double Hair = 1e-9;

    /// <summary>How near to a half an answer may not come that is judged by how it rounds, in steps: nearer, a sound method with a rounded factor goes wrong.</summary>
    private const double TieWidth = 0.02;

    public override string Name => "no tie nearby";

    public override string Promise => "Where a key rounds or chooses, or an answer is judged by how it rounds, no answer hangs on the last bits of a number.";

    internal override Breach? Check(Candidate candidate) => AtTie(candidate) ?? AtJump(candidate);

    private Breach? AtTie(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(part => part.Tolerance.IsRounding))
        {
            var steps = Math.Abs(candidate.Answers[part.Id]) / part.Tolerance.Amount;
            if (Math.Abs(steps - Math.Floor(steps) - 0.5) >= TieWidth) continue;
            return new(Name, Culprit.Of(part), $"the answer to part `{part.Id}` lies at a half between two roundings",
                $"it is {candidate.Answers[part.Id].ToString("G6", CultureInfo.InvariantCulture)}, which could be rounded up or down",
                "Round to another step, give a tolerance instead, or add a constraint that keeps halves out.");
        }
        return null;
    }

    private Breach? AtJump(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(candidate.Structure.MayJump))
        {
            var right = candidate.Answers[part.Id];
            foreach (var given in candidate.Exercise.Givens.Where(given => candidate.Structure.Uses(part, given.Id)))
            {
                if (Moved(candidate, part, given, 1 + Hair) is { } up && part.Tolerance.Accepts(right, up)
                    && Moved(candidate, part, given, 1 - Hair) is { } down && part.Tolerance.Accepts(right, down)) continue;
                return new(Name, Culprit.Of(part), $"the key of part `{part.Id}`, `{part.Key.Text}`, stands at a tie or a limit",
                    $"the least change of `{given.Id}` makes a step away from {ResultText.Of(part, right)}",
                    "Widen the tolerance to the size of that step, or add a constraint that keeps ties out.");
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
        foreach (var before in candidate.Exercise.Parts.TakeWhile(other => other != part).Where(before => candidate.Structure.Uses(part, before.Id)))
        {
            if (KeyValues.Number(before.Key, names) is not { } value) return null;
            names[before.Id] = CellValue.FromNumber(value);
        }
        return KeyValues.Number(part.Key, names);
    }
}
