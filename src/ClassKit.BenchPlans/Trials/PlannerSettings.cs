using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.Trials;

/// <summary>How hard to look for a plan and what to prefer.</summary>
/// <param name="Effort">For the best plan, in the solver's own count of work: about a second to a few seconds each.</param>
/// <param name="TrialEffort">For each question whether there is a plan at all.</param>
/// <param name="Weights">What makes a plan better.</param>
/// <param name="WarmestRise">No rise is planned warmer than this when warming the dough is offered.</param>
/// <param name="Yeast">How a rise gets shorter when it gets warmer.</param>
/// <param name="LongestExtension">The period is offered longer by this many minutes at most.</param>
public sealed record PlannerSettings(
    double Effort,
    double TrialEffort,
    PlanWeights Weights,
    Temperature WarmestRise,
    YeastGasModel Yeast,
    int LongestExtension
)
{
    /// <summary>
    /// Rises to 32 °C at most, below the yeast's optimum, for the flavour's sake; an hour more at most. Common practice, no source.
    /// </summary>
    public static PlannerSettings Default { get; } =
        new(0.3, 0.25, PlanWeights.Default, Temperature.FromCelsius(32), YeastGasModel.Default, 60);
}
