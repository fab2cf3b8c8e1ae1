using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Planning;

/// <summary>What the reader of a plan, or of none, must know besides.</summary>
public abstract record PlanNotice
{
    private PlanNotice() { }

    /// <summary>What is set aside fills the period.</summary>
    /// <param name="Time">The period and what is set aside of it.</param>
    public sealed record NoTime(ClassTime Time) : PlanNotice;

    /// <summary>No plan was found, and it was not proven that there is none.</summary>
    public sealed record NotFound : PlanNotice;

    /// <summary>There is no solver on this machine, and a rule of thumb stands in for it.</summary>
    /// <param name="HasPlan">True if that found a plan, which may not be the best.</param>
    public sealed record NoSolver(bool HasPlan) : PlanNotice;
}
