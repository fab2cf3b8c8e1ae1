namespace ClassKit.Exercises;

/// <summary>What came of drawing a variant.</summary>
/// <param name="Variant">The variant; null if none was found in <see cref="VariantDrawer.MostAttempts"/> draws.</param>
/// <param name="Rejections">The reasons why draws were thrown away, and how often.</param>
public sealed record Drawing(Variant? Variant, IReadOnlyDictionary<string, int> Rejections)
{
    /// <summary>The reason counted when a variant kept every rule but the caller did not want it, such as one dealt already.</summary>
    public const string Refused = "the variant is taken";

    /// <summary>The reason met most often, or null if no draw was thrown away.</summary>
    public string? MainReason =>
        Rejections.OrderByDescending(rejection => rejection.Value).ThenBy(rejection => rejection.Key, StringComparer.Ordinal)
            .Select(rejection => rejection.Key).FirstOrDefault();
}
