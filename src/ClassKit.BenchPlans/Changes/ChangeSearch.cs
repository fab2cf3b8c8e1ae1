using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Trials;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Looks for changes that make a class fit, and offers only those with which a plan was found.</summary>
internal sealed class ChangeSearch(IPlanSolver solver, PlannerSettings settings)
{
    /// <summary>Nobody reads a longer list.</summary>
    private const int MostOffered = 6;

    /// <summary>More of one thing than this is another kitchen.</summary>
    private const int MostMore = 2;

    /// <summary>
    /// How much longer is asked of the solver: the fewest minutes more with which it found a plan; null if it found none.
    /// </summary>
    public int? MissingMinutes(BenchClass bench)
    {
        // With as many shifts as teams every plan there is can be had: where the shortest of them is proven, fewer need not be asked.
        var shortest = Shortest(bench.Teams);
        var answers =
            shortest.Verdict == SolverVerdict.Solved ? [shortest] : Enumerable.Range(1, bench.Teams - 1).Select(Shortest).Append(shortest);
        return answers
            .Select(answer => answer.Plan)
            .OfType<BenchPlan>()
            .Select(plan => (int?)Math.Max(1, plan.Class.Time.PeriodMinutes - bench.Time.PeriodMinutes))
            .Min();

        SolverAnswer Shortest(int shifts) => solver.Solve(new(bench, PlanGoal.Shortest, shifts, settings.TrialEffort));
    }

    /// <summary>The smallest first.</summary>
    /// <param name="bench">A class for which there is no plan.</param>
    /// <param name="missing">What <see cref="MissingMinutes"/> says of it.</param>
    public IReadOnlyList<PlanChange> Offer(BenchClass bench, int? missing)
    {
        var alone = new List<PlanChange>();
        var tooLittle = new List<PlanChange>();
        // Of each kind of change the least that is enough.
        foreach (var family in Families(bench, missing))
        {
            if (family.FirstOrDefault(change => Fits(change.Apply(bench))) is { } enough)
                alone.Add(enough);
            else if (family.Count > 0)
                tooLittle.Add(family[^1]);
        }
        var offered = alone.Count > 0 ? alone : Pairs(bench, tooLittle);
        return [.. offered.OrderBy(change => change.Size).Take(MostOffered)];
    }

    private List<PlanChange> Pairs(BenchClass bench, List<PlanChange> parts)
    {
        var pairs = parts
            .SelectMany((first, at) => parts.Skip(at + 1).Select(second => new SeveralChanges([first, second])))
            .Where(pair => !Clash(pair))
            .OrderBy(pair => pair.Size);
        var enough = new List<PlanChange>();
        foreach (var pair in pairs)
        {
            if (enough.Count < MostOffered / 2 && Fits(pair.Apply(bench)))
                enough.Add(pair);
        }
        return enough;
    }

    /// <summary>Changes of one kind, from the smallest to the largest.</summary>
    private IEnumerable<IReadOnlyList<PlanChange>> Families(BenchClass bench, int? missing)
    {
        for (var at = 0; at < bench.Breads.Count; at++)
        {
            yield return Warmer(bench, at);
            yield return Ahead(bench, at);
            if (bench.Breads[at].Steps.Any(step => step.Oven is { Places: > 1 }))
                yield return [new SmallerLoads(at)];
            if (bench.Breads.Count(bread => !bread.LeftToInstructor) > 1 && !bench.Breads[at].LeftToInstructor)
                yield return [new LeaveToInstructor(at)];
        }
        foreach (var count in bench.Equipment)
            yield return [.. Enumerable.Range(1, MostMore).Select(more => new MoreEquipment(count.Kind, more))];
        if (bench.Breads.Any(bread => bread.Bake is not null))
            yield return [.. Enumerable.Range(1, MostMore).Select(more => new MoreOvens(more))];
        // To full five minutes: a timetable has no others.
        yield return
        [
            new LongerPeriod(
                missing is { } minutes && minutes <= settings.LongestExtension ? (minutes + 4) / 5 * 5 : settings.LongestExtension / 5 * 5
            ),
        ];
    }

    private IReadOnlyList<PlanChange> Warmer(BenchClass bench, int at)
    {
        var coolest = bench
            .Breads[at]
            .Steps.Select(step => step.RiseAt)
            .OfType<Temperature>()
            .Select(rise => rise.Celsius)
            .DefaultIfEmpty(double.MaxValue)
            .Min();
        var warmest = settings.WarmestRise.Celsius;
        if (coolest >= warmest)
            return [];
        return
        [
            .. new[] { (coolest + warmest) / 2, warmest }.Select(celsius => new WarmTheRise(
                at,
                Temperature.FromCelsius(Math.Floor(celsius)),
                settings.Yeast
            )),
        ];
    }

    private static IReadOnlyList<PlanChange> Ahead(BenchClass bench, int at) =>
        [
            .. Enumerable
                .Range(0, bench.Breads[at].Steps.Count - 1)
                .Where(step => bench.Breads[at].Steps[step].MayBeDoneAhead)
                .Select(step => new DoAhead(at, step)),
        ];

    private bool Fits(BenchClass bench) => new Trial(solver, settings, bench).Plan is not null;

    /// <summary>A bread that is left to the instructor needs no other change of its own.</summary>
    private static bool Clash(SeveralChanges pair) =>
        pair
            .Changes.OfType<LeaveToInstructor>()
            .Any(left =>
                pair.Changes.Any(other =>
                    other switch
                    {
                        WarmTheRise warm => warm.Bread == left.Bread,
                        DoAhead ahead => ahead.Bread == left.Bread,
                        SmallerLoads smaller => smaller.Bread == left.Bread,
                        _ => false,
                    }
                )
            );
}
