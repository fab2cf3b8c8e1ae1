using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>One mechanism's part of the gas at one moment.</summary>
/// <param name="Kind">Which mechanism.</param>
/// <param name="Gas">The room that its gas takes with the vapour that saturates it, by typical values, if none has escaped.</param>
public sealed record GasShare(GasSourceKind Kind, Volume Gas);
