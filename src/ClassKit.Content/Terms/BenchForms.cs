using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Rubrics;
using ClassKit.Terms.Bench;

namespace ClassKit.Content.Terms;

/// <summary>Makes the form of a practical rubric for a class.</summary>
public static class BenchForms
{
    /// <summary>The form.</summary>
    /// <param name="rubric">What is marked with.</param>
    /// <param name="cohort">What the class is called.</param>
    /// <param name="students">The class, in the order of its roster.</param>
    /// <param name="teams">How many teams there are, where the roster puts nobody in one.</param>
    public static BenchForm Of(PracticalRubric rubric, string cohort, IReadOnlyList<Student> students, int teams)
    {
        ArgumentNullException.ThrowIfNull(rubric);
        return new(
            rubric.Title,
            ScaleOf(rubric),
            [.. rubric.Criteria.Select(criterion => criterion.Descriptors)],
            cohort,
            students,
            ClassTeam.Of(students) is { Count: > 0 } named ? named.Count : Math.Max(1, teams)
        );
    }

    /// <summary>What a rubric measures with.</summary>
    public static BenchScale ScaleOf(PracticalRubric rubric)
    {
        ArgumentNullException.ThrowIfNull(rubric);
        return new(
            [.. rubric.Criteria.Select(criterion => (criterion.Name, criterion.Weight))],
            [.. rubric.Levels.Select(level => level.Points)],
            [.. rubric.Levels.Select(level => level.Name)]
        );
    }
}
