using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Skills;

/// <summary>What one student can do, skill by skill.</summary>
/// <param name="Student">The student.</param>
/// <param name="Skills">Every skill that they were asked, by name.</param>
public sealed record StudentSkills(Student Student, IReadOnlyList<SkillStanding> Skills);
