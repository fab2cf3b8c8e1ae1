using ClassKit.Baking.Allergens;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Allergies;

/// <summary>What to do about allergies in the kitchen: one source for guide, cards and handout.</summary>
public static class AllergyCare
{
    /// <summary>Abstract read; the article itself was not.</summary>
    public const string InhaledFlour =
        "N. Salvatori et al., Asthma induced by inhalation of flour in adults with food allergy to wheat, Clin. Exp. Allergy 38 (2008) 1349–1356: seven of nine reacted";

    /// <summary>What laws make a label declare.</summary>
    public const string Law = "Regulation (EU) 1169/2011, Annex II; US FD&C Act 201(qq) as amended by the FASTER Act of 2021";

    /// <summary>What every student is told, whoever is in the class.</summary>
    public const string ForEverybody =
        "Whoever has an allergy, an intolerance or coeliac disease tells the instructor alone, before the class. " + AtTheBench;

    /// <summary>Of that, what holds while flour is weighed.</summary>
    public const string AtTheBench =
        "With an allergy to wheat, or to another flour, one neither weighs nor sifts nor dusts it, and is not near while others do: flour in the air is breathed in.";

    /// <summary>What the instructor sees to, for the needs of the class. For the instructor alone.</summary>
    public static IReadOnlyList<Caution> For(IReadOnlyList<AllergenWord> needs)
    {
        ArgumentNullException.ThrowIfNull(needs);
        if (needs.Count == 0)
            return [];
        var flour = needs.Any(need => need.IsOfFlour) ? new[] { Flour } : [];
        return [.. flour, Hands, CrossContact, Emergency, Confidence];
    }

    private static readonly Caution Flour = new(
        "Flour in the air",
        "No weighing, no sifting, no mixing and no dusting, by the student or nearby, of flour that holds it or may hold it: flour hangs in the air and is breathed in. The student comes in when the dust has settled and the benches are wiped wet, or as the medical plan says.",
        InhaledFlour
    );

    private static readonly Caution Hands = new(
        "Hands and mouth",
        "The student does not weigh, handle, taste or wash up what holds it or may hold it. Keeping time, recording, drawing and calculating need no contact.",
        "common practice, no source"
    );

    private static readonly Caution CrossContact = new(
        "Cross-contact",
        "Bowls, spoons, brushes, tins, cloths, scales, ovens and frying fat that others use carry it over. What the student touches is washed with soap or detergent, rinsed and kept apart; hands too are washed with soap, since a sanitiser leaves an allergen where it is.",
        "T. T. Perry et al., J. Allergy Clin. Immunol. 113 (2004) 973–976, on peanut; from memory. Frying fat: common practice, no source"
    );

    private static readonly Caution Emergency = new(
        "In an emergency",
        "The school’s medical plan for the student comes before anything printed here, and this page is no medical advice. Know before the class what it says, who is trained, where the epinephrine (adrenaline) lies and whom to call; at the first sign do as it says.",
        "US CDC, Voluntary Guidelines for Managing Food Allergies in Schools (2013), from memory"
    );

    private static readonly Caution Confidence = new(
        "In confidence",
        "No page for students says that somebody in the class has this need. Keep the guide out of sight, and talk with the student alone.",
        "common practice, no source"
    );
}
