using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Judging;

/// <summary>An answer that later parts may stand on.</summary>
/// <param name="Judgement">What was found of it.</param>
/// <param name="HoldsNumber">True if its cell holds a number that other cells compute with.</param>
/// <param name="IsReached">True if it is a number that changes with fresh inputs.</param>
/// <param name="IsTelling">True if its number says how somebody came to it.</param>
/// <param name="Origins">Where what is wrong or missing in it was counted: the part itself, or those whose slip it only carries on.</param>
internal sealed record JudgedAnswer(Judgement Judgement, bool HoldsNumber, bool IsReached, bool IsTelling, IReadOnlyList<Part> Origins);
