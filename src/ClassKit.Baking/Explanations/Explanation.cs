namespace ClassKit.Baking.Explanations;

/// <summary>How something was computed, step by step, for handouts and feedback.</summary>
/// <param name="Title">What is explained.</param>
/// <param name="Steps">In the order of computing; a later step may use the result of an earlier one.</param>
/// <param name="Model">The assumption or the source behind the steps; empty for plain arithmetic.</param>
public sealed record Explanation(string Title, IReadOnlyList<ExplainedStep> Steps, string Model)
{
    /// <summary>A computation of a single step.</summary>
    internal static Explanation Of(string title, string quantity, string formula, string numbers, string result, string model = "") =>
        new(title, [new(quantity, formula, numbers, result)], model);

    /// <summary>A value with the steps that led to it.</summary>
    internal Computed<T> For<T>(T value)
        where T : notnull
    {
        Computed<T> computed = value;
        return computed.By(this);
    }
}
