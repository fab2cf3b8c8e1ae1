namespace ClassKit.Lessons.Rubrics;

/// <summary>How work at the bench is judged: every criterion at one of the same few levels.</summary>
/// <param name="Id">The file's name under rubrics/, without its ending.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Levels">From the lowest to the highest; at least two.</param>
/// <param name="Criteria">What is looked at; at least one.</param>
/// <param name="Text">Markdown: how to use the rubric.</param>
public sealed record PracticalRubric(
    string Id,
    string Title,
    IReadOnlyList<RubricLevel> Levels,
    IReadOnlyList<RubricCriterion> Criteria,
    string Text
)
{
    /// <summary>What a student earns who reaches the highest level everywhere.</summary>
    public decimal OutOf => Levels[^1].Points * Criteria.Sum(criterion => criterion.Weight);
}
