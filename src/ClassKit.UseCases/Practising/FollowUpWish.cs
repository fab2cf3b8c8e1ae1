namespace ClassKit.UseCases.Practising;

/// <summary>What is wanted of practice after grading.</summary>
/// <param name="Students">Ids of the students it is for; the whole class if empty.</param>
/// <param name="Minutes">The most time that it may take each of them.</param>
/// <param name="Seed">Decides every draw.</param>
public sealed record FollowUpWish(IReadOnlyList<string> Students, int Minutes, ulong Seed);
