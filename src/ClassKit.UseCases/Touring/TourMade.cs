using ClassKit.Lessons.Packs;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Practising;

namespace ClassKit.UseCases.Touring;

/// <summary>The whole job done.</summary>
/// <param name="Pack">The lesson pack.</param>
/// <param name="Practice">Practice for anyone.</param>
/// <param name="Deal">What the class was dealt.</param>
/// <param name="Graded">How what it returned was graded.</param>
public sealed record TourMade(LessonPack Pack, PracticeMade Practice, DealMade Deal, GradeResult Graded)
{
    /// <summary>The class's term; null where the lesson alone was asked.</summary>
    public TourTermMade? Term { get; init; }
}
