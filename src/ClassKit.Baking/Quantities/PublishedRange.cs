namespace ClassKit.Baking.Quantities;

/// <summary>A published range, without a middling value.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end; the same for a single value.</param>
public readonly record struct PublishedRange(double Low, double High);
