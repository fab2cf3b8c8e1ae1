using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Measured;

/// <summary>One number that a team measured.</summary>
/// <param name="Bread">The bread's id.</param>
/// <param name="Measure">What.</param>
/// <param name="Piece">Of which piece, from 1.</param>
/// <param name="Value">In the class's unit.</param>
public sealed record Measurement(string Bread, Measure Measure, int Piece, double Value);
