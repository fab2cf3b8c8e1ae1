namespace ClassKit.Lessons;

/// <summary>An allergy in the class that meets something that is baked.</summary>
/// <param name="Allergen">In the words of the class profile.</param>
/// <param name="Formulas">Which formulas hold it.</param>
public sealed record AllergyAlert(string Allergen, IReadOnlyList<LessonFormula> Formulas)
{
    internal static IReadOnlyList<AllergyAlert> For(Lesson lesson, ClassProfile profile) =>
    [
        .. profile.Allergies
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(allergen => new AllergyAlert(allergen, [.. lesson.Formulas.Where(formula => formula.Allergens.Contains(allergen, StringComparer.OrdinalIgnoreCase))]))
            .Where(alert => alert.Formulas.Count > 0),
    ];
}
