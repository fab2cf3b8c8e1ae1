using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Grades;

/// <summary>One student's grade with its working, step by step.</summary>
/// <param name="Student">The student.</param>
/// <param name="Categories">What every category came to, in the order of the rule.</param>
/// <param name="Percent">The weighted mean in percent, unrounded; null where nothing counts yet.</param>
/// <param name="Rounded">The same, rounded by the rule.</param>
/// <param name="ByAverage">The place in the scale that the average earns.</param>
/// <param name="Lines">What must be passed whatever the average.</param>
/// <param name="Place">The place in the scale after the lines; null where nothing counts yet.</param>
public sealed record TermGrade(
    Student Student,
    IReadOnlyList<CategoryResult> Categories,
    decimal? Percent,
    decimal? Rounded,
    int? ByAverage,
    IReadOnlyList<LineResult> Lines,
    int? Place
)
{
    /// <summary>Every work, in the order of the rule's categories.</summary>
    public IEnumerable<WorkResult> Works => Categories.SelectMany(category => category.Works);

    /// <summary>How much of the rule's shares something counts in, 0 to 1: the others left theirs to it.</summary>
    public decimal StandsOn => Categories.Where(category => category.Share is not null).Sum(category => category.Category.Weight);

    /// <summary>
    /// True while a mark is still to come, an answer still to be decided on, or nothing has shown yet what must be passed whatever the
    /// average: the grade may change.
    /// </summary>
    public bool IsProvisional => Works.Any(work => work.IsOpen || work.Undecided > 0) || Lines.Any(line => line.State == LineState.Open);
}
