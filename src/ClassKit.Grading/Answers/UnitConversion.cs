namespace ClassKit.Grading.Answers;

/// <summary>
/// What a unit written behind a number makes of it: the number times <paramref name="Factor"/> plus <paramref name="Offset"/>.
/// </summary>
/// <param name="Written">The unit as it is written, in any letter case.</param>
/// <param name="Factor">Above 0.</param>
/// <param name="Offset">Not 0 between scales of temperature only.</param>
public sealed record UnitConversion(string Written, double Factor, double Offset)
{
    /// <summary>A number in that unit as one in the unit asked for.</summary>
    public double Of(double number) => number * Factor + Offset;
}
