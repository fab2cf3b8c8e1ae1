namespace ClassKit.Lessons.Rubrics;

/// <summary>One thing that a practical rubric looks at.</summary>
/// <param name="Name">A few words: <c>Scaling</c>.</param>
/// <param name="Weight">How many times a level's points it counts; above 0.</param>
/// <param name="Descriptors">What one sees at each level, in the order of the rubric's levels; as many as there are levels.</param>
public sealed record RubricCriterion(string Name, decimal Weight, IReadOnlyList<string> Descriptors);
