using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Effort;

namespace ClassKit.Exercises.Guarantees;

/// <summary>No student is dealt numbers that are much harder, or much easier, to work with than the others'.</summary>
internal sealed class EffortIsEven(EffortBand band) : VariantRule
{
    public override string Name => "effort is even";

    internal override Breach? Check(Candidate candidate)
    {
        var effort = EffortMeasure.Of(candidate.Exercise, candidate.Givens, candidate.Answers);
        return band.Holds(effort) ? null : new Breach.UnevenEffort(Name, effort, band);
    }
}
