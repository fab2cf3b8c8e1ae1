namespace ClassKit.Baking;

/// <summary>How something was computed, step by step, for handouts and feedback.</summary>
/// <param name="Title">What is explained.</param>
/// <param name="Steps">In the order of computing; a later step may use the result of an earlier one.</param>
/// <param name="Model">The assumption or the source behind the steps; empty for plain arithmetic.</param>
public sealed record Explanation(string Title, IReadOnlyList<ExplainedStep> Steps, string Model);
