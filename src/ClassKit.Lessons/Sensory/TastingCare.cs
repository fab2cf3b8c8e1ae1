using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Sensory;

/// <summary>What to see to where a class tastes blind.</summary>
public static class TastingCare
{
    /// <summary>For every page of the tasting.</summary>
    public static IReadOnlyList<Caution> Cautions { get; } =
    [
        new(
            "Nobody has to taste",
            "A code hides what is in a sample. Whoever must keep away from anything, or would rather not, looks and smells only, or keeps the tally, and gives no reason.",
            "common practice, no source"
        ),
        new(
            "Baked through and kept right",
            "Only what was baked through today and held as the formula cards say is served; no dough, no batter, nothing that fell on the floor.",
            "FDA Food Code 2022, 3-501.16 and 3-501.19"
        ),
        new(
            "One hand, one plate",
            "Hands are washed; gloves or tongs set the samples out; every seat has its own plate, its own cup of water and a cup to spit into. Nothing goes back.",
            "FDA Food Code 2022, 3-301.11 and 3-306.14"
        ),
        new("Not today", "Whoever is ill or has an open sore at hand or mouth neither serves nor tastes.", "FDA Food Code 2022, 2-201.11"),
    ];
}
