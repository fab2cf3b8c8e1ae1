namespace ClassKit.Baking;

/// <summary>One step of an explained computation.</summary>
/// <param name="Quantity">What is computed: <c>flour</c>.</param>
/// <param name="Formula">How, in words or symbols: <c>dough × 100 / total %</c>.</param>
/// <param name="Numbers">The formula with the numbers put in: <c>28,470 g × 100 / 170</c>.</param>
/// <param name="Result">What comes out, with its unit: <c>16,747.06 g</c>.</param>
public sealed record ExplainedStep(string Quantity, string Formula, string Numbers, string Result)
{
    /// <summary>The step as one line of text.</summary>
    public override string ToString() => $"{Quantity} = {Formula} = {Numbers} = {Result}";
}
