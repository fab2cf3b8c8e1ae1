namespace ClassKit.Lessons.Rubrics;

/// <summary>One level of a practical rubric.</summary>
/// <param name="Name">A word: <c>Secure</c>.</param>
/// <param name="Points">What a criterion of weight 1 earns at this level; 0 or more, higher at every level.</param>
public sealed record RubricLevel(string Name, decimal Points);
