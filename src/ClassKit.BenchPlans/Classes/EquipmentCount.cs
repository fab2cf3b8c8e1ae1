namespace ClassKit.BenchPlans.Classes;

/// <summary>A number of pieces of equipment: of those a kitchen has, or of those a step takes.</summary>
/// <param name="Kind">What.</param>
/// <param name="Count">How many; 1 or more where a step takes them, 0 or more where a kitchen has them.</param>
public sealed record EquipmentCount(EquipmentKind Kind, int Count)
{
    /// <summary>
    /// Minutes from switching it on, as the class begins, until it is hot; 0 where a step takes it, or where it needs no heating.
    /// </summary>
    public int HeatUpMinutes { get; init; }

    /// <summary>True where nobody has counted what a kitchen has, and one for each team was taken.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>In words: <c>2 griddles</c>.</summary>
    public override string ToString() => Kind.Counted(Count);
}
