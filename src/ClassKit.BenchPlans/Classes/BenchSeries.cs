namespace ClassKit.BenchPlans.Classes;

/// <summary>
/// A bread and its variants, which are held against each other: all that their methods have in common should be done alike, or nobody knows
/// what made the difference.
/// </summary>
/// <param name="Members">Which of <see cref="BenchClass.Breads"/>, counted from 0, the one as written first; two or more.</param>
public sealed record BenchSeries(IReadOnlyList<int> Members)
{
    /// <summary>Every series of a class.</summary>
    public static IReadOnlyList<BenchSeries> Of(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return
        [
            .. Enumerable
                .Range(0, bench.Breads.Count)
                .Select(at => new BenchSeries([
                    at,
                    .. Enumerable.Range(0, bench.Breads.Count).Where(other => bench.Breads[other].VariantOf == bench.Breads[at].Id),
                ]))
                .Where(series => series.Members.Count > 1),
        ];
    }

    /// <summary>
    /// Steps that may take just as long in two members or more: of one name, and as long by the method. One that the series changes stands
    /// in none.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<StepOfBread>> AlikeSteps(BenchClass bench) =>
        Groups(bench, (steps, at) =>
            steps[at].MinMinutes < steps[at].MaxMinutes ? (steps[at].Name, steps[at].MinMinutes, steps[at].MaxMinutes) : null
        );

    /// <summary>Steps after which the dough may wait just as long in two members or more, before a next one of the same name.</summary>
    public IReadOnlyList<IReadOnlyList<StepOfBread>> AlikeWaits(BenchClass bench) =>
        Groups(bench, (steps, at) =>
            at + 1 < steps.Count && steps[at].Wait.MinMinutes < steps[at].Wait.MaxMinutes && !BenchBread.StaysInOven(steps, at)
                ? (steps[at].Name, steps[at + 1].Name, steps[at].Wait)
                : null
        );

    /// <summary>
    /// The step of each member that all of them should begin together: the first in the oven, or the last where one is not baked.
    /// </summary>
    public IReadOnlyList<StepOfBread> Together(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        var areBaked = Members.All(member => bench.Breads[member].Bake is not null);
        return
        [
            .. Members.Select(member => new StepOfBread(
                member,
                areBaked ? bench.Breads[member].Bake!.Value.First : bench.Breads[member].Steps.Count - 1
            )),
        ];
    }

    /// <summary>A step that a method has twice is held against the same one of the two.</summary>
    private List<IReadOnlyList<StepOfBread>> Groups(BenchClass bench, Func<IReadOnlyList<BenchStep>, int, object?> alike)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return
        [
            .. Members
                .SelectMany(member => bench.Breads[member].Steps.Select((_, at) => new StepOfBread(member, at)))
                .Select(step =>
                    (
                        Step: step,
                        Alike: alike(bench.Breads[step.Bread].Steps, step.Step),
                        Turn: Turn(bench.Breads[step.Bread].Steps, step.Step)
                    )
                )
                .Where(each => each.Alike is not null)
                .GroupBy(each => (each.Alike, each.Turn), each => each.Step)
                .Select(group => group.ToArray())
                .Where(group => group.Length > 1),
        ];
    }

    private static int Turn(IReadOnlyList<BenchStep> steps, int at) => steps.Take(at).Count(step => step.Name == steps[at].Name);
}
