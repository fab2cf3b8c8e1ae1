using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>A given that is drawn must be a number that a bench can weigh and a person would write down.</summary>
/// <remarks>Constants are the author's own: a molar mass or an exact ounce may need more digits.</remarks>
internal sealed class GivensFitTheBench : VariantRule
{
    /// <summary>1250 g, 27.5 °C, 0.125 L; a fifth digit is never read off a kitchen instrument. Common practice, no source.</summary>
    public const int MostDigits = 4;

    public override string Name => "givens fit the bench";

    public override string Promise => $"Every given that is drawn has at most {MostDigits} digits and is a reading that its instrument can show.";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var given in candidate.Exercise.Givens)
        {
            if (given.IsConstant) continue;
            var value = candidate.Givens[given.Id];
            var shown = AnswerUnit.Shown(given.Unit, value);
            var step = BenchResolution.Of(given.Unit, shown);
            if (step > 0 && shown % step != 0)
            {
                return new(Name, Culprit.Of(given), $"no instrument shows `{given.Id}` so finely", $"it is {GivenText.Of(given, value)}",
                    string.Create(CultureInfo.InvariantCulture, $"Choose a lowest value and a step that are multiples of {step} {given.Unit}."));
            }
            if (Digits.Significant(shown) > MostDigits)
            {
                return new(Name, Culprit.Of(given), $"`{given.Id}` has more digits than a person would write down", $"it is {GivenText.Of(given, value)}",
                    "Choose a larger step.");
            }
        }
        return null;
    }
}
