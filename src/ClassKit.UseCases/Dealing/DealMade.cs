using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Dealing;

/// <summary>A class was dealt its practice.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Dealt">What everybody was dealt.</param>
/// <param name="Spread">The sets that it was spread over; null where everyone has the same.</param>
/// <param name="Draws">What the author of an exercise should know of its draws, one sentence each.</param>
public sealed record DealMade(DealRequest Request, DealtClass Dealt, Spread? Spread, IReadOnlyList<string> Draws);
