using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>What came of evaluating a cell or a formula.</summary>
/// <param name="Status">Whether there is a value at all.</param>
/// <param name="Value">The value when <paramref name="Status"/> is <see cref="EvaluationStatus.Computed"/>; blank otherwise.</param>
/// <param name="Reason">Why there is none, or for an error value what led to it; null when there is nothing to say.</param>
/// <param name="Dependencies">Every cell that the result was computed from, directly or through others.</param>
public sealed record Evaluation(EvaluationStatus Status, CellValue Value, Obstacle? Reason, IReadOnlyCollection<CellAddress> Dependencies);
