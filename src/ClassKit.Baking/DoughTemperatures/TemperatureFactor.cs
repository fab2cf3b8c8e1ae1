using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.DoughTemperatures;

/// <summary>One of the temperatures that make a dough's temperature.</summary>
/// <param name="Name">Whose: <c>room</c>, <c>flour</c>, <c>water</c>, <c>preferment</c>.</param>
/// <param name="Temperature">As measured.</param>
public sealed record TemperatureFactor(string Name, Temperature Temperature);
