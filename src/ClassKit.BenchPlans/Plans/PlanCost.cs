using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Plans;

/// <summary>The drawbacks of a plan, in minutes summed over all loads.</summary>
/// <param name="StandingMinutes">Finished breads stand until the tasting.</param>
/// <param name="WaitingMinutes">Doughs wait between steps, beyond the waits that must be; and the first team between a demonstration and
/// what it showed.</param>
/// <param name="HurriedMinutes">Hands-on steps are planned shorter than their longest.</param>
/// <param name="UnlikeMinutes">Members of a series differ in what the series does not change; not summed over loads. See
/// <see cref="SeriesDifference"/>.</param>
public sealed record PlanCost(int StandingMinutes, int WaitingMinutes, int HurriedMinutes, int UnlikeMinutes)
{
    /// <summary>Counts what a plan has.</summary>
    public static PlanCost Of(BenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (standing, waiting, hurried) = (0, 0, 0);
        foreach (var load in plan.Class.Loads)
        {
            var steps = plan.StepsOf(load).ToArray();
            var method = plan.Class.Breads[load.Bread].Steps;
            standing += plan.Class.Breads[load.Bread].IsForShow ? 0 : plan.Class.Time.ReadyBy - steps[^1].End;
            waiting += Enumerable
                .Range(1, steps.Length - 1)
                .Sum(at => steps[at].Start - steps[at - 1].End - method[at - 1].Wait.MinMinutes);
            hurried += Enumerable
                .Range(0, steps.Length)
                .Where(at => method[at].IsHandsOn)
                .Sum(at => method[at].MaxMinutes - steps[at].Minutes);
        }
        waiting += plan.Demonstrations.Sum(shown => shown.Demonstration.Before is { } before ? FirstStart(plan, before) - shown.End : 0);
        return new(standing, waiting, hurried, SeriesDifferences.In(plan).Sum(difference => difference.Minutes));
    }

    /// <summary>One number: the lower, the better the plan.</summary>
    public int Weighed(PlanWeights weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return weights.Standing * StandingMinutes
            + weights.Waiting * WaitingMinutes
            + weights.Hurry * HurriedMinutes
            + weights.Unlike * UnlikeMinutes;
    }

    private static int FirstStart(BenchPlan plan, StepOfBread which) =>
        plan.Steps.Where(step => plan.Class.StepLike(step.Load.Bread, which) == step.Step).Min(step => step.Start);
}
