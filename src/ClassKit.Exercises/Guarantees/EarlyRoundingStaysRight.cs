using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>Who goes on from the numbers as the key prints them, and not from the unrounded ones, has used a sound method.</summary>
internal sealed class EarlyRoundingStaysRight : VariantRule
{
    public override string Name => "early rounding stays right";

    internal override Breach? Check(Candidate candidate)
    {
        if (candidate.Exercise.Parts.Count < 2)
            return null;
        var names = new Dictionary<string, CellValue>(candidate.Names, StringComparer.OrdinalIgnoreCase);
        foreach (var part in candidate.Exercise.Parts)
        {
            var right = candidate.Answers[part.Id];
            var value = KeyValues.Number(part.Key, names);
            if (value is not { } found || !part.Tolerance.Accepts(right, found))
                return new Breach.WrongWhenRounded(Name, part, value, right);
            names[part.Id] = CellValue.FromNumber(ResultText.Rounded(part, found));
        }
        return null;
    }
}
