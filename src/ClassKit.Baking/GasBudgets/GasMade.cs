using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>Dry gas that a source has made, wherever it is: in bubbles or dissolved.</summary>
/// <param name="Kind">Which source.</param>
/// <param name="Bench">By the end of the bench.</param>
/// <param name="Set">By the time the crumb sets.</param>
/// <param name="Explanation">How it was computed.</param>
internal sealed record GasMade(GasSourceKind Kind, Band<AmountOfSubstance> Bench, Band<AmountOfSubstance> Set, Explanation Explanation);
