using ClassKit.Baking.GasBudgets;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Lessons.Cards;

/// <summary>What a lesson pack assumes besides the lesson and the class.</summary>
/// <param name="Mixing">What is assumed where ingredients are mixed.</param>
/// <param name="Gas">The gas budgets' assumptions.</param>
public sealed record PackSettings(MixSettings Mixing, GasBudgetSettings Gas)
{
    /// <summary>The defaults of both.</summary>
    public static PackSettings Default { get; } = new(MixSettings.Default, GasBudgetSettings.Default);
}
