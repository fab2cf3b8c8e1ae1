using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Conflicts;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.RuleOfThumb;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Trials;

namespace ClassKit.BenchPlans.Planning;

/// <summary>Plans a class: in as few shifts as fit, and of those plans the best.</summary>
/// <param name="solver">What finds plans.</param>
/// <param name="settings">How hard to look and what to prefer.</param>
public sealed class BenchPlanner(IPlanSolver solver, PlannerSettings settings)
{
    /// <summary>The plan with how good it is, or why there is none and what would make it fit.</summary>
    /// <param name="bench">The class.</param>
    /// <param name="offersChanges">False where what would make it fit is asked for later, or never: see <see cref="Offering"/>.</param>
    public BenchPlanning Plan(BenchClass bench, bool offersChanges = true)
    {
        ArgumentNullException.ThrowIfNull(bench);
        if (bench.Time.WorkMinutes <= 0)
            return BenchPlanning.Without(new PlanNotice.NoTime(bench.Time));
        var trial = new Trial(solver, settings, bench);
        if (trial.IsUnavailable)
            return ByRule(bench);
        if (trial.Plan is null && WithLess(bench) is { } less)
            return Plan(less, offersChanges).AskedFor(bench);
        if (trial.Plan is null)
            return NoPlan(bench, trial, offersChanges);

        var answer = solver.Solve(
            new(bench, PlanGoal.Best, trial.Plan.Shifts.Count, settings.Effort) { Hint = trial.Plan, Weights = settings.Weights }
        );
        if (answer.Verdict == SolverVerdict.Unavailable)
            return ByRule(bench);
        return answer.Plan is { } best
            ? BenchPlanning.Of(best, settings.Weights, answer.Bound, answer.Verdict == SolverVerdict.Solved)
            : BenchPlanning.Of(trial.Plan, settings.Weights, 0, false);
    }

    /// <summary>Some plan in as few shifts as fit, however good; null if none was found.</summary>
    public BenchPlan? Any(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        if (bench.Time.WorkMinutes <= 0)
            return null;
        var trial = new Trial(solver, settings, bench);
        return trial.IsUnavailable ? ByRule(bench).Plan
            : trial.Plan is null && WithLess(bench) is { } less ? Any(less)
            : trial.Plan;
    }

    /// <summary>Why a class has no plan.</summary>
    /// <param name="bench">A class for which <see cref="Any"/> found none.</param>
    /// <param name="offersChanges">False where nobody asks what would make it fit.</param>
    public BenchPlanning WhyNot(BenchClass bench, bool offersChanges)
    {
        ArgumentNullException.ThrowIfNull(bench);
        if (bench.Time.WorkMinutes <= 0)
            return BenchPlanning.Without(new PlanNotice.NoTime(bench.Time));
        if (WithLess(bench) is not null)
            return WhyNot(InAnyOrder(bench), offersChanges);
        var trial = new Trial(solver, settings, bench);
        return trial.IsUnavailable ? ByRule(bench) : NoPlan(bench, trial, offersChanges);
    }

    /// <summary>The planning of a class without a plan, with what would make it fit.</summary>
    public BenchPlanning Offering(BenchClass bench, BenchPlanning none)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(none);
        return none.Notice is PlanNotice.NoTime or PlanNotice.NoSolver
            ? none
            : none with
            {
                Changes = new ChangeSearch(solver, settings).Offer(InAnyOrder(bench), none.MissingMinutes),
            };
    }

    /// <summary>What is cooked first is a wish: where it cannot be had, the class still bakes, and that is said.</summary>
    private static BenchClass InAnyOrder(BenchClass bench) => bench with { CookedFirst = [], ShownBehind = [] };

    /// <summary>The class with one wish less, what is shown behind something first; null where it has none.</summary>
    private static BenchClass? WithLess(BenchClass bench) =>
        bench.ShownBehind.Any(order => order.MayBe(bench)) ? bench with { ShownBehind = [] }
        : bench.CookedFirst.Count > 0 ? InAnyOrder(bench)
        : null;

    private BenchPlanning NoPlan(BenchClass bench, Trial trial, bool offersChanges)
    {
        var search = new ChangeSearch(solver, settings);
        var missing = search.MissingMinutes(bench);
        return new(
            null,
            null,
            trial.IsImpossible ? new ConflictTracing(solver, settings).Trace(bench) : null,
            offersChanges ? search.Offer(bench, missing) : [],
            trial.IsImpossible ? null : new PlanNotice.NotFound()
        )
        {
            MissingMinutes = missing,
        };
    }

    /// <summary>Without a solver: a plan by rule of thumb, in as few shifts as it manages.</summary>
    private BenchPlanning ByRule(BenchClass bench)
    {
        if (GreedyPlanner.Plans(bench).FirstOrDefault() is not { } plan)
            return WithLess(bench) is { } less
                ? ByRule(less).AskedFor(bench)
                : BenchPlanning.Without(new PlanNotice.NoSolver(HasPlan: false));
        return BenchPlanning.Of(plan, settings.Weights, 0, false) with { Notice = new PlanNotice.NoSolver(HasPlan: true) };
    }
}
