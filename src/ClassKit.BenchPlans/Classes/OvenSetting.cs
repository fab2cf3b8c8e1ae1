using ClassKit.Baking.Quantities;

namespace ClassKit.BenchPlans.Classes;

/// <summary>How a step uses an oven.</summary>
/// <param name="Temperature">What the dial says.</param>
/// <param name="Places">How many of the oven's places a load takes; 1 or more.</param>
/// <param name="DoorShut">True if the door stays shut from the beginning of the bake to its end.</param>
public sealed record OvenSetting(Temperature Temperature, int Places, bool DoorShut);
