using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Skills;

/// <summary>What looking at skills over time takes.</summary>
/// <param name="Works">Grades of several deals, each with its day.</param>
/// <param name="On">The day of looking.</param>
/// <param name="Test">A day on which it is wanted; null for none.</param>
public sealed record SkillsRequest(IReadOnlyList<(ClassGrades Grades, DateOnly On)> Works, DateOnly On, DateOnly? Test)
{
    /// <summary>Grades of a class of an earlier year; empty for none.</summary>
    public IReadOnlyList<ClassGrades> LastYear { get; init; } = [];
}
