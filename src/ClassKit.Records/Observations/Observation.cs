namespace ClassKit.Records.Observations;

/// <summary>Something measured of a bread.</summary>
/// <param name="Team">Whose bread.</param>
/// <param name="Bread">Which.</param>
/// <param name="Measured">What was measured, such as <c>height</c>.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit, such as <c>cm</c>.</param>
/// <param name="Remark">What was written beside it; null for nothing.</param>
public sealed record Observation(string Team, string Bread, string Measured, decimal Value, string Unit, string? Remark);
