using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Draws;

/// <summary>What came of drawing a variant.</summary>
/// <param name="Variant">The variant; null if none was found in <see cref="VariantGenerator.MostAttempts"/> draws.</param>
/// <param name="Rejections">Why draws were thrown away, the most frequent reason first.</param>
/// <param name="Refused">How many draws kept every rule but were not wanted by the caller, such as a variant dealt already.</param>
public sealed record Drawing(Variant? Variant, IReadOnlyList<Rejection> Rejections, int Refused);
