namespace ClassKit.Lessons.Sensory;

/// <summary>What lies before one taster in the first part of a tasting.</summary>
/// <param name="Seat">From 1.</param>
/// <param name="Codes">The number of every bread, in the order in which this seat tastes them.</param>
public sealed record TasterPlate(int Seat, IReadOnlyList<int> Codes);
