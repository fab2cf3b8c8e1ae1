using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>What a lesson pack assumes besides the lesson and the class.</summary>
/// <param name="HandFriction">What mixing by hand adds in the dough temperature equation. Teams with a mixer find theirs by a trial: see <see cref="DoughTemperature.Friction"/>.</param>
/// <param name="Gas">The gas budgets' assumptions.</param>
public sealed record PackSettings(TemperatureDifference HandFriction, GasBudgetSettings Gas)
{
    /// <summary>No friction (common practice for stirring by hand, no source), and the gas budgets' defaults.</summary>
    public static PackSettings Default { get; } = new(default, GasBudgetSettings.Default);
}
