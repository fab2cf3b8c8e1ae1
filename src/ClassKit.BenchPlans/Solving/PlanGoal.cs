namespace ClassKit.BenchPlans.Solving;

/// <summary>What a solver looks for.</summary>
public enum PlanGoal
{
    /// <summary>The plan of the lowest weighed cost.</summary>
    Best,

    /// <summary>Any plan that keeps the rules.</summary>
    Any,

    /// <summary>The plan whose tasting begins the soonest, however long the period.</summary>
    Shortest,
}
