using ClassKit.Exercises.Effort;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A given that is drawn must be a number that a bench can weigh and a person would write down.</summary>
/// <remarks>Constants are the author's own: a molar mass or an exact ounce may need more digits.</remarks>
internal sealed class GivensFitTheBench : VariantRule
{
    /// <summary>1250 g, 27.5 °C, 0.125 L; a fifth digit is never read off a kitchen instrument. Common practice, no source.</summary>
    public const int MostDigits = 4;

    public override string Name => "givens fit the bench";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var given in candidate.Exercise.Givens)
        {
            if (given.IsConstant)
                continue;
            var value = candidate.Givens[given.Id];
            var shown = given.Unit.Shown(value);
            var step = BenchResolution.Of(given.Unit, shown);
            if (step > 0 && shown % step != 0)
                return new Breach.GivenTooFine(Name, given, value, step);
            if (Digits.Significant(shown) > MostDigits)
                return new Breach.GivenTooLong(Name, given, value);
        }
        return null;
    }
}
