namespace ClassKit.Baking;

/// <summary>How much gas there would be at one moment if none had escaped.</summary>
/// <param name="Minute">Since the dough was mixed.</param>
/// <param name="Stage">The stage's name.</param>
/// <param name="InOven">True from the oven's door on.</param>
/// <param name="Dough">The dough's temperature, by the model.</param>
/// <param name="Gas">Bubbles with their vapour and, where the dough boils, steam.</param>
/// <param name="IsSet">True once the walls no longer stretch: the gas stays as it is from then on.</param>
public sealed record GasPoint(double Minute, string Stage, bool InOven, Temperature Dough, Band<Volume> Gas, bool IsSet);
