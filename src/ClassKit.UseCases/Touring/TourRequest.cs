using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Packs;

namespace ClassKit.UseCases.Touring;

/// <summary>What the whole job takes. <see cref="DemoMaterial"/> reads it from a checkout.</summary>
/// <param name="Pack">The lesson and the class.</param>
/// <param name="Roster">Who is dealt the lesson's exercises.</param>
/// <param name="Seed">Decides every draw; returned work fits one only.</param>
/// <param name="Returned">What came back.</param>
/// <param name="Corrections">The instructor's table of corrections, which can be read only by what was dealt.</param>
public sealed record TourRequest(PackRequest Pack, Roster Roster, ulong Seed, ReturnedFiles Returned, Source Corrections)
{
    /// <summary>The class's whole term; null for the lesson alone.</summary>
    public TourTermMaterial? Term { get; init; }
}
