using ClassKit.Grading.Results;

namespace ClassKit.Grading.Summaries;

/// <summary>How a class did on one skill, over all parts that practise it.</summary>
/// <param name="Skill">The skill.</param>
/// <param name="Parts">Its parts, in workbook order.</param>
/// <param name="Asked">How many graded students were asked any of it.</param>
/// <param name="Difficulty">The mean over those students of the share of its points they earned, 0 to 1: high for an easy skill; null if
/// nobody was asked.</param>
/// <param name="Discrimination">How much larger a share the best 27 % by the whole set earned than the weakest 27 % (Kelley, J. Educ.
/// Psychol. 30, 1939, 17), -1 to 1; null where nobody's total differs.</param>
/// <param name="Below">The students who earned less of it than the marking scheme's line for teaching again, in the order of the
/// class.</param>
public sealed record SkillSummary(
    string Skill,
    IReadOnlyList<PartSummary> Parts,
    int Asked,
    double? Difficulty,
    double? Discrimination,
    IReadOnlyList<StudentGrade> Below
);
