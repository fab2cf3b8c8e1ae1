using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Rubrics;

namespace ClassKit.UseCases.BenchMarks;

/// <summary>What a form of bench marks is made of.</summary>
/// <param name="Rubric">What is marked with.</param>
/// <param name="Cohort">What the class is called.</param>
/// <param name="Students">The class, in the order of its roster.</param>
/// <param name="Teams">How many teams there are.</param>
public sealed record BenchFormRequest(PracticalRubric Rubric, string Cohort, IReadOnlyList<Student> Students, int Teams)
{
    /// <summary>What the class prints on; null where nothing is said.</summary>
    public Paper? Paper { get; init; }
}
