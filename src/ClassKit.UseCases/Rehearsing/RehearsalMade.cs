using ClassKit.Grading.Rehearsals;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>An invented class took the exercises.</summary>
/// <param name="Report">How the grader and the exercises fared.</param>
/// <param name="Deal">What the class was dealt.</param>
/// <param name="Returned">What it handed in, in the order of the students.</param>
/// <param name="Graded">How that was graded.</param>
public sealed record RehearsalMade(RehearsalReport Report, DealMade Deal, IReadOnlyList<byte[]> Returned, GradeResult Graded);
