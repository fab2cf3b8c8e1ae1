namespace ClassKit.Terms.Difficulty;

/// <summary>What a class can be expected to earn with a set on average: of ten such bands about eight hold what it does earn.</summary>
/// <param name="Low">In points.</param>
/// <param name="Middle">In points.</param>
/// <param name="High">In points.</param>
/// <param name="OutOf">What the parts are worth that something is known of.</param>
/// <param name="Unknown">What the parts are worth that nobody was asked yet; they are not in the band.</param>
/// <param name="OfTheClass">True if it rests on what this class did before, false if on what others did.</param>
public sealed record PointsBand(double Low, double Middle, double High, double OutOf, double Unknown, bool OfTheClass);
