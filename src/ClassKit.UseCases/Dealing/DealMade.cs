using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Dealing;

/// <summary>A class was dealt its practice.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Dealt">What everybody was dealt.</param>
/// <param name="Spread">The sets that it was spread over; null where everyone has the same.</param>
/// <param name="Shared">Exercises with too few variants for all.</param>
public sealed record DealMade(DealRequest Request, DealtClass Dealt, Spread? Spread, IReadOnlyList<SharedVariants> Shared);
