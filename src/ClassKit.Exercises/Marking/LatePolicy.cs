namespace ClassKit.Exercises.Marking;

/// <summary>What late work costs.</summary>
/// <param name="ADay">The share of the points taken off for every day begun after the work was due, 0 to 1.</param>
/// <param name="AtMost">The greatest share taken off, however late, 0 to 1.</param>
public sealed record LatePolicy(decimal ADay, decimal AtMost)
{
    /// <summary>The share taken off work that is so many days late.</summary>
    public decimal Off(int days) => Math.Min(AtMost, ADay * days);
}
