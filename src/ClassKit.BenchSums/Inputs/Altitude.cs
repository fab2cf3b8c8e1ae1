namespace ClassKit.BenchSums.Inputs;

/// <summary>How high a kitchen lies.</summary>
/// <param name="Metres">Above sea level; below it negative.</param>
public readonly record struct Altitude(double Metres)
{
    private const double MetresPerFoot = 0.3048;

    /// <summary>From feet: the international foot is 0.3048 m.</summary>
    public static Altitude FromFeet(double feet) => new(feet * MetresPerFoot);
}
