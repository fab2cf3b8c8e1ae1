using ClassKit.Content.Sources;

namespace ClassKit.UseCases.Handing;

/// <summary>What handing a lesson over takes.</summary>
/// <param name="Lesson">The lesson's folder.</param>
/// <param name="Prices">A price list that goes along; null for none.</param>
public sealed record HandOverRequest(Source Lesson, Source? Prices = null);
