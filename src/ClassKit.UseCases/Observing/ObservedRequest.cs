using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Packs;

namespace ClassKit.UseCases.Observing;

/// <summary>What drawing a class's measurements takes.</summary>
/// <param name="Pack">The lesson and the class.</param>
/// <param name="Returned">Workbooks of observations, and files that their page saved.</param>
public sealed record ObservedRequest(PackRequest Pack, ReturnedFiles Returned);
