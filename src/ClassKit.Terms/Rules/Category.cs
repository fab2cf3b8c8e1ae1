namespace ClassKit.Terms.Rules;

/// <summary>A kind of work that has a weight of its own in the grade.</summary>
/// <param name="Name">As the rule calls it.</param>
/// <param name="Weight">Its share of the grade, above 0; those of a rule add up to 1.</param>
/// <param name="DropLowest">How many of the lowest results do not count; at least one always does. 0 where works count by points: dropping
/// the lowest share could then let a better mark lower the result.</param>
/// <param name="Counting">How its works count against each other.</param>
public sealed record Category(string Name, decimal Weight, int DropLowest, CategoryCounting Counting)
{
    /// <summary>The most that a rule may drop; a term has few works of a kind.</summary>
    public const int MostDropped = 10;
}
