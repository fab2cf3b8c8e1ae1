namespace ClassKit.Baking.Explanations;

/// <summary>One step of an explained computation.</summary>
/// <param name="Quantity">What is computed: <c>flour</c>.</param>
/// <param name="Formula">How, in words or symbols: <c>dough × 100 / total %</c>. Where there is no arithmetic to show: from where, such as
/// a table.</param>
/// <param name="Numbers">The formula with the numbers put in: <c>28,470 g × 100 / 170</c>. Empty where a value is taken from a table or a
/// model.</param>
/// <param name="Result">What comes out, with its unit: <c>16,747.06 g</c>.</param>
/// <remarks>
/// Recomputed from its text, <paramref name="Numbers"/> gives <paramref name="Result"/> within the rounding of what is printed: a test does
/// so.
/// </remarks>
public sealed record ExplainedStep(string Quantity, string Formula, string Numbers, string Result)
{
    /// <summary>A value that is taken from a table, a measurement or a model rather than worked out on the line.</summary>
    public static ExplainedStep Given(string quantity, string from, string result) => new(quantity, from, "", result);

    /// <summary>The step as one line of text.</summary>
    public override string ToString() =>
        Numbers.Length > 0 ? $"{Quantity} = {Formula} = {Numbers} = {Result}" : $"{Quantity} = {Result} ({Formula})";
}
