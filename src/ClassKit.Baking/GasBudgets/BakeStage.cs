using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.GasBudgets;

/// <summary>A stretch of a formula's way from the mixing bowl to the end of baking.</summary>
/// <param name="Name">A word or two: <c>First rise</c>.</param>
/// <param name="Minutes">How long it takes; not negative.</param>
/// <param name="Temperature">Of the dough on the bench, of the air in the oven.</param>
/// <param name="InOven">Which of the two.</param>
/// <param name="Degasses">True if the dough is stirred down, punched or moulded as the stage begins: its bubbles go back to what they were after mixing.</param>
public sealed record BakeStage(string Name, Band<double> Minutes, Temperature Temperature, bool InOven, bool Degasses = false);
