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
                Steps = [.. bread.Steps.Skip(Through + 1)],
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

    /// <summary>A step by its new number, which is below 0 where it is done the day before.</summary>
    private StepOfBread? Later(StepOfBread? step) => step is { } of && of.Bread == Bread ? of with { Step = of.Step - Through - 1 } : step;

    internal override int Size => 3;
}
