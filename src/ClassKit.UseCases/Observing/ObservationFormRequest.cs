using ClassKit.UseCases.Packs;

namespace ClassKit.UseCases.Observing;

/// <summary>What a form for measurements is made of.</summary>
/// <param name="Pack">The lesson and the class.</param>
public sealed record ObservationFormRequest(PackRequest Pack);
