namespace ClassKit.Grading.Findings.Quoting;

/// <summary>Something that a student typed, where a fact quotes it.</summary>
/// <param name="Text">As it was typed, whole: a name that is cut in two is not found any more.</param>
public sealed record Quotation(string Text)
{
    internal Quotation Under(IDisguise disguise) => new(disguise.OfTyped(Text));
}
