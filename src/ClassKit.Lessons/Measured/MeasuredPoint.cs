namespace ClassKit.Lessons.Measured;

/// <summary>One measurement as it lies among the class's.</summary>
/// <param name="Team">Whose.</param>
/// <param name="Piece">Of which piece, from 1.</param>
/// <param name="Value">In the class's unit.</param>
/// <param name="IsFar">True if it lies far from the rest; see <see cref="FarFromTheRest"/>.</param>
public sealed record MeasuredPoint(string Team, int Piece, double Value, bool IsFar);
