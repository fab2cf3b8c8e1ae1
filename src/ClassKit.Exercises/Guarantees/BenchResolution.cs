using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Guarantees;

/// <summary>The finest steps that a teaching kitchen's instruments show, by the unit of a quantity.</summary>
/// <remarks>
/// Common practice, no source: a pocket scale shows 0.01 g up to some tens of grams, a fine scale 0.1 g up to some hundreds, a bench scale
/// whole grams; thermometers show tenths, and nobody reads half a degree Fahrenheit.
/// </remarks>
internal static class BenchResolution
{
    /// <summary>The step at a value, in the scale shown; 0 for a unit that no instrument here measures.</summary>
    public static decimal Of(Unit unit, decimal shown) =>
        unit.IsPercent
            ? 0.01m
            : unit.Code switch
            {
                "g" => Math.Abs(shown) switch
                {
                    < 50 => 0.01m,
                    < 1000 => 0.1m,
                    _ => 1,
                },
                "kg" => 0.001m,
                "mg" => 1,
                "ml" => Math.Abs(shown) < 50 ? 0.1m : 1,
                "l" => 0.001m,
                "C" => 0.1m,
                "F" => 0.5m,
                "ozm" => 0.05m,
                "lbm" => 0.01m,
                "mn" => 0.5m,
                "sec" => 1,
                _ => 0,
            };
}
