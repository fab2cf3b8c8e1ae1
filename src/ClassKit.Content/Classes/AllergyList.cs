using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Classes;

/// <summary>
/// Reads what somebody in the class must keep away from: everyday words, each of which must be known, since one that is not would be looked
/// for in vain.
/// </summary>
internal static class AllergyList
{
    private static readonly string[] Between = [" and ", "&", ";", "/", "+"];

    public static IReadOnlyList<AllergenWord> Read(IReadOnlyList<Located> names, ProblemList problems)
    {
        var words = new List<AllergenWord>();
        foreach (var name in names)
        {
            if (AllergenWords.Find(name.Text) is not { } word)
                problems.Add(name.Line, $"`{name.Text}` is not an allergen that is known here", Advice(name.Text, problems.Pantry));
            else if (!words.Contains(word))
                words.Add(word);
        }
        return words;
    }

    private static string Advice(string typed, Pantry pantry)
    {
        var parts = typed.Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length > 1 && parts.All(part => AllergenWords.Find(part) is not null))
            return $"Write several as a list: `allergies: [{string.Join(", ", parts)}]`.";
        return AllergenAdvice.For(typed, pantry);
    }
}
