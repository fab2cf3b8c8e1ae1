using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Practising;

/// <summary>Practice was made.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Dealt">Whose numbers are which.</param>
/// <param name="Draws">What the author of an exercise should know of its draws, one sentence each.</param>
public sealed record PracticeMade(PracticeRequest Request, DealtClass Dealt, IReadOnlyList<string> Draws);
