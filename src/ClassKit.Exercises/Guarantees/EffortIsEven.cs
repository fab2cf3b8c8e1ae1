using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Effort;

namespace ClassKit.Exercises.Guarantees;

/// <summary>No student is dealt numbers that are much harder, or much easier, to work with than the others'.</summary>
internal sealed class EffortIsEven(EffortBand band) : VariantRule
{
    public override string Name => "effort is even";

    public override string Promise => $"Digits, steps and carries of every variant together count {band.Low} to {band.High}.";

    internal override Breach? Check(Candidate candidate)
    {
        var effort = EffortMeasure.Of(candidate.Exercise, candidate.Givens, candidate.Answers);
        return band.Holds(effort)
            ? null
            : new(Name, new(), "the numbers are harder or easier to work with than those of other students",
                $"digits, steps and carries count {effort}, and {band.Low} to {band.High} are allowed",
                "Choose ranges of numbers that are alike in their digits, or state a wider band at the top, such as `effort: 20 to 60`.");
    }
}
