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

    public override string Name => "answers within reason";

    internal override Breach? Check(Candidate candidate)
    {
        foreach (var part in candidate.Exercise.Parts.Where(part => part.IsNumber))
        {
            var answer = candidate.Answers[part.Id];
            var shown = part.Unit.Shown(answer);
            if (Fault(part, answer, shown) is { } fault)
                return new Breach.OutOfReason(Name, part, fault, answer);
            if (Digits.Significant(Digits.Cut(ResultText.Rounded(part, answer), 15)) > MostDigits)
                return new Breach.AnswerTooLong(Name, part, MostDigits, answer);
        }
        return null;
    }

    private static AnswerFault? Fault(Part part, double answer, double shown)
    {
        if (shown < 0 && !part.Unit.MayBeNegative)
            return AnswerFault.Negative;
        if (Math.Abs(shown) >= Largest)
            return AnswerFault.TooLarge;
        if (!part.Unit.IsTemperature && part.Tolerance.Around(answer) >= Math.Abs(answer))
            return AnswerFault.Nothing;
        return !part.Unit.IsTemperature && Math.Abs(shown) < Smallest ? AnswerFault.TooSmall : null;
    }
}
