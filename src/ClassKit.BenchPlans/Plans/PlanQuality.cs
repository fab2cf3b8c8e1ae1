namespace ClassKit.BenchPlans.Plans;

/// <summary>How good a plan is.</summary>
/// <param name="Cost">Its drawbacks in minutes.</param>
/// <param name="Weighed">The same as one number.</param>
/// <param name="Bound">No plan in as many shifts has a lower number than this.</param>
/// <param name="IsProven">True if none is better.</param>
public sealed record PlanQuality(PlanCost Cost, int Weighed, double Bound, bool IsProven)
{
    /// <summary>By which share of its cost a better plan could be better at most; 0 if none can.</summary>
    public double Gap => IsProven || Weighed <= Bound ? 0 : (Weighed - Bound) / Weighed;
}
