using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Do the first steps of one bread the day before.</summary>
/// <param name="Bread">Which bread, counted from 0.</param>
/// <param name="Through">The last step done the day before, counted from 0; the bread keeps after it.</param>
public sealed record DoAhead(int Bread, int Through) : PlanChange
{
    /// <inheritdoc/>
    public override BenchClass Apply(BenchClass bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return bench.With(Bread, bread =>
            bread with
            {
                Steps = [.. bread.Steps.Skip(Through + 1).Select(step => Left(step, WarmMinutes(bread)))],
                StepsDoneBefore = bread.StepsDoneBefore + Through + 1,
            }
        ) with
        {
            Demonstrations =
            [
                .. bench.Demonstrations.Select(shown =>
                    shown with
                    {
                        Before = Later(shown.Before) is { } before ? before with { Step = Math.Max(0, before.Step) } : null,
                        After = Later(shown.After) is { Step: >= 0 } after ? after : null,
                    }
                ),
            ],
        };
    }

    /// <summary>
    /// How long what must be kept cold has been out of it the day before, at the longest. It was under time as a control then, and a night in
    /// the refrigerator does not begin the clock anew: FDA Food Code 3-501.19(B).
    /// </summary>
    private int WarmMinutes(BenchBread bread) =>
        bread
            .Steps.Take(Through + 1)
            .Where(step => step is { BakedWithinMinutes: not null, IsInTheCold: false })
            .Sum(step => step.MaxMinutes + step.Wait.MinMinutes);

    private static BenchStep Left(BenchStep step, int warmMinutes) =>
        step with
        {
            BakedWithinMinutes = step.BakedWithinMinutes - warmMinutes,
        };

    /// <summary>A step by its new number, which is below 0 where it is done the day before.</summary>
    private StepOfBread? Later(StepOfBread? step) => step is { } of && of.Bread == Bread ? of with { Step = of.Step - Through - 1 } : step;

    internal override int Size => 3;
}
