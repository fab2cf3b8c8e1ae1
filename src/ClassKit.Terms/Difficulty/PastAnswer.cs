namespace ClassKit.Terms.Difficulty;

/// <summary>One answer that was judged.</summary>
/// <param name="Part">What was asked.</param>
/// <param name="Points">Earned, 0 to <paramref name="OutOf"/>.</param>
/// <param name="OutOf">Possible, above 0.</param>
/// <param name="WrongTurn">The id of the misconception that was met; null for none.</param>
/// <param name="NearMiss">The wrong formula near the key that it behaved like, over the exercise's names; null for none.</param>
public sealed record PastAnswer(AskedPart Part, decimal Points, decimal OutOf, string? WrongTurn, string? NearMiss = null)
{
    /// <summary>True if more than half of the points were earned: the two sides that a Rasch model knows.</summary>
    public bool IsGot => Points * 2 > OutOf;

    /// <summary>Earned of what was possible, 0 to 1.</summary>
    public double Share => (double)(Points / OutOf);
}
