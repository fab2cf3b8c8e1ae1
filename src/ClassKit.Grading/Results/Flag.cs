namespace ClassKit.Grading;

/// <summary>A fact about a returned workbook that the instructor should see; never a verdict.</summary>
/// <param name="Code">A stable word, such as <c>given-overwritten</c>.</param>
/// <param name="Fact">The fact in one sentence, with cells and values.</param>
public sealed record Flag(string Code, Sentence Fact)
{
    /// <summary>The fact in words.</summary>
    public string Message => Fact.ToString();
}
