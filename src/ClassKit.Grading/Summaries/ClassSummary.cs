using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Summaries;

/// <summary>What a class's grades say together.</summary>
/// <param name="Parts">Every part in workbook order.</param>
/// <param name="TeachAgain">The parts that fall below the marking scheme's line, weakest first; of equal ones those of which most can be
/// said what happened.</param>
/// <param name="Skills">Every skill, in the order in which the workbook first asks it.</param>
/// <param name="Statistics">How well the parts measured the class.</param>
public sealed record ClassSummary(
    IReadOnlyList<PartSummary> Parts,
    IReadOnlyList<PartSummary> TeachAgain,
    IReadOnlyList<SkillSummary> Skills,
    TestStatistics Statistics
)
{
    /// <summary>The wrong methods that nobody listed and that several students used, those with the most students first.</summary>
    public IReadOnlyList<WrongMethod> WrongMethods { get; init; } = [];

    /// <summary>How many students make such a group.</summary>
    public int FewestAlike { get; init; } = Summaries.WrongMethods.Fewest;
}
