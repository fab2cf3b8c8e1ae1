namespace ClassKit.BenchPlans.Solving;

/// <summary>How a search ended.</summary>
public enum SolverVerdict
{
    /// <summary>With a plan than which there is none better, or with any plan where that was asked.</summary>
    Solved,

    /// <summary>With a plan, but the effort was used up before it was proven best.</summary>
    Unproven,

    /// <summary>With the proof that there is no plan.</summary>
    Impossible,

    /// <summary>Without a plan and without that proof: the effort was used up.</summary>
    Undecided,

    /// <summary>It did not begin: the solver cannot be used on this machine.</summary>
    Unavailable,
}
