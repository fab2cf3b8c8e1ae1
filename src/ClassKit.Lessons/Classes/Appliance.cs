namespace ClassKit.Lessons.Classes;

/// <summary>What a kitchen has of something that cooks besides its ovens.</summary>
/// <param name="Count">How many; null where nobody has counted.</param>
/// <param name="Places">How many loads one takes at once; 1 or more.</param>
/// <param name="HeatUpMinutes">From cold; null where nobody has said.</param>
public readonly record struct Appliance(int? Count, int Places, int? HeatUpMinutes)
{
    /// <summary>How wide one place is inside, in millimetres; null where nobody has said. A steamer's baskets have it.</summary>
    public double? PlaceMillimetres { get; init; }
}
