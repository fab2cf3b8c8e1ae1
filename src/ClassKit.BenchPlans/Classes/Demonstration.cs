namespace ClassKit.BenchPlans;

/// <summary>What the instructor shows while every team watches: nobody has hands in a dough, whatever rises or bakes goes on.</summary>
/// <param name="Name">What is shown.</param>
/// <param name="Minutes">How long it takes; above 0.</param>
/// <param name="Before">The step that no team begins before it has seen this; null if any time will do.</param>
public sealed record Demonstration(string Name, int Minutes, StepOfBread? Before);
