using System.Globalization;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Solving;
using Google.OrTools.Sat;

namespace ClassKit.BenchSolver;

/// <summary>Finds bench plans with CP-SAT, the constraint solver of Google's OR-Tools.</summary>
/// <remarks>
/// One worker, a fixed seed, and a limit in the solver's own count of work: the same question gets the same plan, however fast or busy the
/// machine.
/// </remarks>
/// <param name="cancellation">Stops a search, which then ends with an <see cref="OperationCanceledException"/>.</param>
public sealed class CpSatSolver(CancellationToken cancellation = default) : IPlanSolver
{
    /// <summary>The share of the effort that goes into finding good plans; the rest goes into proofs.</summary>
    private const double FindingShare = 0.5;

    /// <summary>
    /// After each better plan one is asked for that costs half of what is left to save, and after so many dead ends one that costs a little less:
    /// plans to begin from cost thousands, and the solver would go down from them by the cost of one minute at a time.
    /// </summary>
    private const string InBigSteps = "binary_search_num_conflicts:5";

    private const string FromBelow = "use_objective_lb_search:true";

    /// <inheritdoc/>
    public SolverAnswer Solve(SolverQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        try
        {
            return Search(question);
        }
        catch (Exception absent) when (IsAbsent(absent))
        {
            return new(SolverVerdict.Unavailable, null, 0);
        }
    }

    /// <summary>The best plan is looked for in two rounds: the first finds good plans, the second proves how good they are.</summary>
    private SolverAnswer Search(SolverQuestion question)
    {
        if (question.Goal != PlanGoal.Best)
            return Round(question, question.Effort, "");
        var found = Round(question, question.Effort * FindingShare, InBigSteps);
        if (found.Verdict is not (SolverVerdict.Unproven or SolverVerdict.Undecided))
            return found;
        var proven = Round(question with { Hint = found.Plan ?? question.Hint }, question.Effort * (1 - FindingShare), FromBelow);
        return proven.Verdict is SolverVerdict.Solved or SolverVerdict.Impossible || found.Plan is null
            ? proven
            : found with
            {
                Plan = Better(found.Plan, proven.Plan, question.Weights),
                Bound = Math.Max(found.Bound, proven.Bound),
            };
    }

    private static BenchPlan Better(BenchPlan found, BenchPlan? later, PlanWeights weights) =>
        later is not null && PlanCost.Of(later).Weighed(weights) < PlanCost.Of(found).Weighed(weights) ? later : found;

    private SolverAnswer Round(SolverQuestion question, double effort, string strategy)
    {
        var model = new PlanModel(question);
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"num_workers:1 random_seed:1 max_deterministic_time:{effort} {strategy}"
            ),
        };
        cancellation.ThrowIfCancellationRequested();
        using var stop = cancellation.Register(solver.StopSearch);
        var status = solver.Solve(model.Constraints);
        cancellation.ThrowIfCancellationRequested();
        return status switch
        {
            CpSolverStatus.Optimal => new(SolverVerdict.Solved, model.Read(solver), Bound(question, solver)),
            CpSolverStatus.Feasible => new(SolverVerdict.Unproven, model.Read(solver), Bound(question, solver)),
            CpSolverStatus.Infeasible => new(SolverVerdict.Impossible, null, 0),
            CpSolverStatus.Unknown => new(SolverVerdict.Undecided, null, 0),
            _ => throw new InvalidOperationException($"The solver says {status}: {model.Constraints.Validate()}"),
        };
    }

    /// <summary>Costs are whole numbers, so a bound between two of them is as good as the higher one.</summary>
    private static double Bound(SolverQuestion question, CpSolver solver) =>
        question.Goal == PlanGoal.Any ? 0 : Math.Max(0, Math.Ceiling(solver.BestObjectiveBound - 1e-6));

    private static bool IsAbsent(Exception exception) =>
        exception switch
        {
            TypeInitializationException outer => outer.InnerException is { } inner && IsAbsent(inner),
            DllNotFoundException or BadImageFormatException or EntryPointNotFoundException or FileNotFoundException or FileLoadException =>
                true,
            _ => false,
        };
}
