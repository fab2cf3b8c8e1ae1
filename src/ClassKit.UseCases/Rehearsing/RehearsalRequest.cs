using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>What rehearsing takes.</summary>
/// <param name="Set">What is dealt.</param>
/// <param name="Students">How many are invented, 2 to <see cref="RehearseLesson.MostStudents"/>.</param>
/// <param name="Wish">How it is dealt.</param>
public sealed record RehearsalRequest(PracticeSet Set, int Students, DealWish Wish);
