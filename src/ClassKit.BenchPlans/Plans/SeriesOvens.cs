namespace ClassKit.BenchPlans.Plans;

/// <summary>The ovens in which one member of a series is baked.</summary>
/// <param name="Bread">Which bread, counted from 0.</param>
/// <param name="Ovens">Counted from 1, in order, each once.</param>
public sealed record SeriesOvens(int Bread, IReadOnlyList<int> Ovens);
