using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.Lessons.Classes;

/// <summary>The class that a lesson is prepared for.</summary>
/// <param name="Name">What the class is called.</param>
/// <param name="Kitchen">The teaching kitchen's name.</param>
/// <param name="Students">How many; at least 1.</param>
/// <param name="Teams">How many teams bake; at least 1, at most the students.</param>
/// <param name="PiecesPerTeam">How many pieces of each bread a team makes, unless the bread says otherwise; at least 1.</param>
/// <param name="PeriodMinutes">How long the class lasts.</param>
/// <param name="KitchenTemperature">Of the room and of everything stored in it outside the refrigerator.</param>
/// <param name="AltitudeMetres">Above sea level.</param>
/// <param name="ScaleResolution">What the teams' scales can show; above 0.</param>
/// <param name="SmallScaleResolution">What the scale for salt and leavening can show; above 0.</param>
/// <param name="Ovens">How many ovens the teams share.</param>
/// <param name="Allergies">What somebody in the class must keep away from. Nothing of it may reach a page that students see.</param>
/// <param name="Units">Which units pages show.</param>
public sealed record ClassProfile(
    string Name,
    string Kitchen,
    int Students,
    int Teams,
    int PiecesPerTeam,
    int PeriodMinutes,
    Temperature KitchenTemperature,
    double AltitudeMetres,
    Mass ScaleResolution,
    Mass SmallScaleResolution,
    int Ovens,
    IReadOnlyList<AllergenWord> Allergies,
    UnitSystem Units
)
{
    /// <summary>How many tins or trays fit in one oven where a profile says nothing. Common practice, no source.</summary>
    public const int UsualOvenPlaces = 4;

    /// <summary>How long an oven heats up where a profile says nothing. Common practice, no source.</summary>
    public const int UsualHeatUpMinutes = 20;

    /// <summary>
    /// The refrigerator where a profile says nothing: 4 °C, FDA's 40 °F for consumers, below the 5 °C (41 °F) of the Food Code, 3-501.16.
    /// </summary>
    public static Temperature UsualRefrigerator { get; } = Temperature.FromCelsius(4);

    /// <summary>How many tins or trays one oven holds at once; 1 or more.</summary>
    public int OvenPlaces { get; init; } = UsualOvenPlaces;

    /// <summary>Minutes from switching an oven on, as the class begins, until it is hot; 0 if they are hot by then.</summary>
    public int OvenHeatUpMinutes { get; init; } = UsualHeatUpMinutes;

    /// <summary>Of the refrigerator: what comes straight out of it is as cold. At or below what the Food Code asks for.</summary>
    public Temperature Refrigerator { get; init; } = UsualRefrigerator;

    /// <summary>What the teams share besides ovens. Of a kind that is not listed there is always one free.</summary>
    public IReadOnlyList<EquipmentCount> Equipment { get; init; } = [];

    /// <summary>How many loads one of a kind of equipment takes at once, and how long it heats up, where the profile says so.</summary>
    public IReadOnlyDictionary<EquipmentKind, Appliance> Appliances { get; init; } = new Dictionary<EquipmentKind, Appliance>();

    /// <summary>What the kitchen has of a kind that cooks; one load at a time where it says no more.</summary>
    public Appliance ApplianceOf(EquipmentKind kind) =>
        Appliances.TryGetValue(kind, out var appliance)
            ? appliance
            : new(Equipment.FirstOrDefault(count => count.Kind == kind)?.Count, 1, null);

    /// <summary>
    /// True if cards carry formulas changed for the altitude by the middle of what is published; otherwise they stay as written.
    /// </summary>
    public bool AdjustsForAltitude { get; init; }

    /// <summary>The ingredients that the kitchen knows: those that ship, and its own in their place.</summary>
    public Pantry Pantry { get; init; } = Pantry.Shipped;

    /// <summary>The flours that the kitchen has, by their ids; null where nobody has said.</summary>
    public IReadOnlyList<string>? Flours { get; init; }

    /// <summary>Where the class's clocks are set to; null if the profile does not say.</summary>
    public ClassTimeZone? TimeZone { get; init; }

    /// <summary>What pages and workbooks are printed on; null if the profile does not say.</summary>
    public Paper? Paper { get; init; }

    /// <summary>What the clock on the wall says as the class begins; null if the profile does not say.</summary>
    public ClassStart? Start { get; init; }

    /// <summary>
    /// The teams as the class list has them, as many as there are teams; empty where no list says who is in which, and teams are numbered.
    /// </summary>
    public IReadOnlyList<ClassTeam> NamedTeams { get; init; } = [];

    /// <summary>What a team is called behind the word team.</summary>
    /// <param name="team">Its number, from 1.</param>
    public string TeamName(int team) => ClassTeam.NameOf(team, Teams, NamedTeams);

    /// <summary>How many people every team has at least.</summary>
    public int SmallestTeam => NamedTeams.Count == Teams ? NamedTeams.Min(team => team.Members.Count) : Students / Teams;

    /// <summary>What ingredients cost; null if nobody has written it down.</summary>
    public PriceList? Prices { get; init; }
}
