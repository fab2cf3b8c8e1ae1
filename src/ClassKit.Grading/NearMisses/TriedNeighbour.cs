using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses;

/// <summary>A neighbour of a key, and what it does.</summary>
/// <param name="Neighbour">The neighbour.</param>
/// <param name="Values">What it gives on each of the inputs that tell behaviours apart, with right answers.</param>
internal sealed record TriedNeighbour(Neighbour Neighbour, double[] Values);
