namespace ClassKit.BenchPlans.Classes;

/// <summary>What the instructor shows while every team watches: nobody has hands in a dough, whatever rises or bakes goes on.</summary>
/// <param name="Name">What is shown.</param>
/// <param name="Minutes">How long it takes; above 0.</param>
/// <param name="Before">The step that no team begins before it has seen this; null if any time will do.</param>
public sealed record Demonstration(string Name, int Minutes, StepOfBread? Before)
{
    /// <summary>What it occupies of the shared equipment while it is shown.</summary>
    public IReadOnlyList<EquipmentCount> Uses { get; init; } = [];

    /// <summary>
    /// The step that the first who make the bread have finished when this begins, because it shows what came of it; null if it needs
    /// nobody's bread.
    /// </summary>
    public StepOfBread? After { get; init; }

    /// <summary>
    /// The instructor's own load that it begins, as a position among the class's breads: its first step begins with the demonstration. Null
    /// if it bakes nothing.
    /// </summary>
    public int? Load { get; init; }
}
