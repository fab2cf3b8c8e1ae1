using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Packs;

/// <summary>A dough as it comes to the bench.</summary>
/// <param name="Mixed">As warm as it was mixed.</param>
/// <param name="Kitchen">As warm as the room is, toward which it goes where it stands.</param>
/// <param name="Batch">As much as stands in one bowl before it is divided; above 0.</param>
internal sealed record BenchPlace(Temperature Mixed, Temperature Kitchen, Mass Batch);
