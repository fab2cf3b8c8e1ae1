using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>
/// What one source of gas makes in a mass of dough, if none of it escapes: amounts as made, volumes as found in the bubbles, without what
/// the water holds.
/// </summary>
/// <param name="Kind">Which source.</param>
/// <param name="BenchAmount">Dry gas made by the end of the bench.</param>
/// <param name="SetAmount">Dry gas made by the time the crumb sets.</param>
/// <param name="OnBench">Its bubbles at the end of the bench, at the bench's temperature, with the vapour that saturates it.</param>
/// <param name="AtSet">Its bubbles at the temperature at which the crumb sets, with the vapour that saturates it.</param>
/// <param name="Explanation">How it was computed; its model names what is assumed.</param>
public sealed record GasSource(
    GasSourceKind Kind,
    Band<AmountOfSubstance> BenchAmount,
    Band<AmountOfSubstance> SetAmount,
    Band<Volume> OnBench,
    Band<Volume> AtSet,
    Explanation Explanation
)
{
    /// <summary>The mass of carbon dioxide by the time the crumb sets; nothing for air.</summary>
    public Band<Mass> CarbonDioxide => Kind == GasSourceKind.Air ? default : SetAmount.Map(Chemistry.CarbonDioxide.MassOf);
}
