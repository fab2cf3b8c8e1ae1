using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Classes;

namespace ClassKit.UseCases.Packs;

/// <summary>The class that a pack is built for when no profile is named.</summary>
internal static class UsualClass
{
    // Common practice, no source: a teaching kitchen of ordinary size at sea level.
    public static ClassProfile Profile { get; } =
        new(
            "a class of 24",
            "Teaching kitchen",
            Students: 24,
            Teams: 6,
            PiecesPerTeam: 6,
            PeriodMinutes: 150,
            Temperature.FromCelsius(21),
            AltitudeMetres: 0,
            Mass.FromGrams(1),
            Mass.FromGrams(0.1),
            Ovens: 3,
            Allergies: [],
            UnitSystem.Both
        );
}
