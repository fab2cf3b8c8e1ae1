using ClassKit.Baking.Allergens;

namespace ClassKit.Lessons.Allergies;

/// <summary>A published substitution, held against every need of the class.</summary>
/// <param name="Published">What is published.</param>
/// <param name="Brings">What it is declared to hold that another need of the class names.</param>
/// <param name="Unknown">What of it may hold something that the class's needs name, or of which nobody knows.</param>
public sealed record StandIn(Substitution Published, IReadOnlyList<Allergen> Brings, IReadOnlyList<(string Name, string Why)> Unknown);
