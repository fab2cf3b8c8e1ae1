using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>The gas at one moment: what there would be if none had escaped, and what the dough can be expected to hold.</summary>
/// <param name="Minute">Since the dough was mixed.</param>
/// <param name="Stage">The stage's name.</param>
/// <param name="InOven">True from the oven's door on.</param>
/// <param name="Dough">The dough's temperature, by the model.</param>
/// <param name="Gas">All gas made, as bubbles with their vapour and, where the dough boils, steam as far as the skin holds it: the rest
/// blows off.</param>
/// <param name="Held">Of that gas, what is still in the dough: see <see cref="GasHolding"/>.</param>
/// <param name="Shares">Which mechanism's gas that is, in the budget's order; together the typical <paramref name="Gas"/>.</param>
/// <param name="IsSet">True once the walls no longer stretch: the gas stays as it is from then on.</param>
public sealed record GasPoint(
    double Minute,
    string Stage,
    bool InOven,
    Temperature Dough,
    Band<Volume> Gas,
    Band<Volume> Held,
    IReadOnlyList<GasShare> Shares,
    bool IsSet
)
{
    /// <summary>
    /// Of what is held, the steam that has blown a hollow up; none in a crumb, whose bubbles hold vapour only beside their gas.
    /// </summary>
    public Band<Volume> Steam { get; init; }
}
