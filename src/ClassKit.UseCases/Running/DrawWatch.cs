using ClassKit.Exercises.Draws;

namespace ClassKit.UseCases.Running;

/// <summary>Tells a run of every variant that is drawn, which also stops it.</summary>
internal sealed class DrawWatch(Run run) : IProgress<DrawProgress>
{
    public void Report(DrawProgress value) => run.Tell(new(RunStep.DrawingVariants, value.Done, value.Total));
}
