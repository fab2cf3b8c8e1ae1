using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Effort;
using ClassKit.Exercises.Texts;

namespace ClassKit.Exercises.Guarantees;

/// <summary>An answer must be one that makes sense in a kitchen: not nothing, not less than nothing, not a string of digits.</summary>
internal sealed class AnswersWithinReason : VariantRule
{
    /// <summary>1234.56 g is the most that anybody writes. Common practice, no source.</summary>
    private const int MostDigits = 6;

    private const double Largest = 1_000_000;
    private const double Smallest = 0.001;

    /// <summary>Units of what there cannot be less of than nothing; a temperature or a difference in price may be negative.</summary>
    private static readonly HashSet<string> Positive = new(StringComparer.Ordinal)
    {
        "g", "kg", "mg", "mL", "ml", "L", "l", "oz", "lb", "min", "h", "s", "cups", "tsp", "tbsp", "pieces", "mol", "mmol", "cm", "mm", "m", "kPa", "hPa",
    };

    public override string Name => "answers within reason";

    public override string Promise => $"No answer is nothing, a negative amount, a million or a thousandth, or needs more than {MostDigits} digits.";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(part => part.Choice is null))
        {
            var answer = candidate.Answers[part.Id];
            var shown = AnswerUnit.Shown(part.Unit, answer);
            if (Fault(part, answer, shown) is { } fault)
            {
                return new(Name, Culprit.Of(part), $"the answer to part `{part.Id}` {fault}", $"it is {ResultText.Of(part, answer)}",
                    "Change the ranges, ask in another unit, or add a constraint that keeps such answers out.");
            }
            if (Digits.Significant(Digits.Cut(ResultText.Rounded(part, answer), 15)) > MostDigits)
            {
                return new(Name, Culprit.Of(part), $"the answer to part `{part.Id}` needs more than {MostDigits} digits", $"it is {ResultText.Of(part, answer)}",
                    "Widen the tolerance to what a scale can show.");
            }
        }
        return null;
    }

    private static string? Fault(Part part, double answer, double shown)
    {
        var isTemperature = part.Unit is "°C" or "°F" or "K";
        if (shown < 0 && Positive.Contains(part.Unit)) return "is less than nothing";
        if (Math.Abs(shown) >= Largest) return "is a million or more";
        if (!isTemperature && part.Tolerance.Around(answer) >= Math.Abs(answer)) return "is nothing within its tolerance";
        return !isTemperature && Math.Abs(shown) < Smallest ? "is less than a thousandth" : null;
    }
}
