using ClassKit.Baking.Altitude;

namespace ClassKit.BenchSums.Inputs;

/// <summary>How high a kitchen lies.</summary>
/// <param name="Metres">Above sea level; below it negative.</param>
public readonly record struct Altitude(double Metres)
{
    /// <summary>From feet: the international foot is 0.3048 m.</summary>
    public static Altitude FromFeet(double feet) => new(feet * AltitudeTable.MetresPerFoot);
}
