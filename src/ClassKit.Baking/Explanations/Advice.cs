namespace ClassKit.Baking.Explanations;

/// <summary>Something to mind about a result that is possible all the same.</summary>
/// <param name="Code">A stable short name, such as <c>hot-for-yeast</c>.</param>
/// <param name="Message">What to mind and what to do.</param>
/// <param name="Source">Where that is published, or "common practice, no source".</param>
public sealed record Advice(string Code, string Message, string Source);
