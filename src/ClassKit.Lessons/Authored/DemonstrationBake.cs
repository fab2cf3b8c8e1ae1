using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Authored;

/// <summary>What a demonstration bakes in an oven place of its own, from its beginning on.</summary>
/// <param name="Oven">What the dial says.</param>
/// <param name="Minutes">How long it stays in; at least as long as the demonstration takes.</param>
/// <param name="DoorShut">True if nobody may open that oven meanwhile.</param>
public sealed record DemonstrationBake(Temperature Oven, int Minutes, bool DoorShut);
