using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Cautions;

/// <summary>What an author calls a standing caution: in the brackets of one that is printed in its place.</summary>
public static class HazardNames
{
    /// <summary>
    /// Every name, in the order of the hazards. What must be declared has none: it follows from formulas, and no author replaces it.
    /// </summary>
    public static IReadOnlyList<string> All { get; } = [.. Enum.GetValues<Hazard>().Where(CanBeReplaced).Select(Of)];

    /// <summary>The name of a hazard's standing caution.</summary>
    public static string Of(Hazard hazard) =>
        hazard switch
        {
            Hazard.HouseRules => "house rules",
            Hazard.RawFlour => "raw flour",
            Hazard.Allergens => "allergens",
            Hazard.OpenFlame => "burner",
            Hazard.Scald => "scalds",
            Hazard.HotOven => "hot oven",
            Hazard.HotFat => "hot fat",
            Hazard.Frying => "deep fat",
            Hazard.HotSugar => "hot sugar",
            Hazard.Steam => "steam",
            Hazard.PressureCooker => "pressure cooker",
            Hazard.HotPlate => "hot plate",
            Hazard.Grill => "grill",
            Hazard.Torch => "blow torch",
            Hazard.Microwave => "microwave",
            Hazard.Lye => "lye",
            Hazard.DeepCold => "dry ice",
            Hazard.Blade => "knives",
            Hazard.Mandoline => "mandoline",
            Hazard.Mixer => "mixer",
            Hazard.Blender => "blender",
            Hazard.Balloon => "balloons",
            Hazard.Probe => "probes",
            Hazard.FirstAid => "first aid",
            Hazard.Holding => "holding",
            Hazard.Freezing => "freezing",
            Hazard.Reheating => "reheating",
        };

    /// <summary>The hazard that a name, or the title of its standing caution, means in any letter case; null if none.</summary>
    public static Hazard? Find(string name) =>
        Enum.GetValues<Hazard>()
            .Cast<Hazard?>()
            .FirstOrDefault(hazard =>
                string.Equals(Of(hazard!.Value), name, StringComparison.OrdinalIgnoreCase)
                || string.Equals(StandingCautions.TitleOf(hazard.Value), name, StringComparison.OrdinalIgnoreCase)
            );

    /// <summary>True of every standing caution that an authored one may take the place of.</summary>
    public static bool CanBeReplaced(Hazard hazard) => hazard != Hazard.Allergens;
}
