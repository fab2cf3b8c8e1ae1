using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Skills;

/// <summary>What the students of a class can do on a day.</summary>
/// <param name="Cohort">What the class is called.</param>
/// <param name="On">The day.</param>
/// <param name="Test">A day on which it is wanted; null if none was named.</param>
/// <param name="Students">In the order of the class.</param>
public sealed record ClassSkills(string Cohort, DateOnly On, DateOnly? Test, IReadOnlyList<StudentSkills> Students)
{
    /// <summary>What the class prints on; null where nothing is said.</summary>
    public Paper? Paper { get; init; }

    /// <summary>Exercises that a class of an earlier year was asked too; empty where none was named.</summary>
    public IReadOnlyList<YearBeside> Years { get; init; } = [];

    /// <summary>Every skill that anyone was asked, by name.</summary>
    public IReadOnlyList<string> Names =>
        [.. Students.SelectMany(student => student.Skills).Select(skill => skill.Skill).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>When a skill should be practised again; null where no day was named or it is over.</summary>
    public DateOnly? PractiseOn(SkillStanding skill)
    {
        ArgumentNullException.ThrowIfNull(skill);
        return Test is { } test ? Spacing.PractiseOn(skill.LastAsked, test, On) : null;
    }
}
