using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Recording;

/// <summary>What was dealt to a student, and what came of it.</summary>
/// <param name="Deal">What was dealt to the class.</param>
/// <param name="Grade">The student's grades that stand; null where none are on record.</param>
public sealed record StudentWork(DealtClass Deal, StudentGrade? Grade)
{
    /// <summary>What was dealt to them; null where they were dealt nothing and stand in the grades alone.</summary>
    public DealtStudent? Dealt { get; init; }

    /// <summary>The files that came back from them.</summary>
    public IReadOnlyList<AccountedFile> Files { get; init; } = [];

    /// <summary>Points that the instructor typed for them into a gradebook.</summary>
    public IReadOnlyList<TypedPoints> Typed { get; init; } = [];
}
