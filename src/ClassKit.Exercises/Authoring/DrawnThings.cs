namespace ClassKit.Exercises.Authoring;

/// <summary>What drawings are called in authored text, and the states in which a thing can be drawn.</summary>
public static class DrawnThings
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<DrawnThing> All { get; } = Enum.GetValues<DrawnThing>();

    /// <summary>The name.</summary>
    public static string Name(DrawnThing thing) =>
        thing switch
        {
            DrawnThing.CutDough => "cut dough",
            DrawnThing.CutMuffin => "cut muffin",
        };

    /// <summary>The thing of a name; null if there is none.</summary>
    public static DrawnThing? Find(string name) =>
        All.Select(thing => (DrawnThing?)thing)
            .FirstOrDefault(thing => string.Equals(Name(thing!.Value), name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Its states, each called as the option that names it has to be.</summary>
    public static IReadOnlyList<string> States(DrawnThing thing) =>
        thing switch
        {
            DrawnThing.CutDough => ["under_proofed", "just_proofed", "over_proofed"],
            DrawnThing.CutMuffin => ["well_mixed", "overmixed", "stood_long"],
        };
}
