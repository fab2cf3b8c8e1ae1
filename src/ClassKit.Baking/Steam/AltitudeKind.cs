namespace ClassKit.Baking.Steam;

/// <summary>What a height above sea level means to the standard atmosphere. The two differ by 5 Pa at 1500 m.</summary>
public enum AltitudeKind
{
    /// <summary>As surveyed and printed on maps.</summary>
    Geometric,

    /// <summary>The height in a field of constant gravity, in which the atmosphere's equations are written.</summary>
    Geopotential,
}
