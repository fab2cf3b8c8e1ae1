namespace ClassKit.BenchPlans.Classes;

/// <summary>Everything that a bench plan has to respect: one class, its kitchen, and what it bakes.</summary>
/// <param name="Time">The period and what is set aside in it.</param>
/// <param name="Teams">How many teams there are; at least 1. All are alike, but for the breads of a series, which they share out.</param>
/// <param name="PeoplePerTeam">How many people each team can count on; at least 1.</param>
/// <param name="Equipment">What the teams share besides ovens. A kind that is not listed is not counted: there is always one free.</param>
/// <param name="Ovens">The ovens, all alike.</param>
/// <param name="Breads">What is made, each with at least one step.</param>
/// <param name="Demonstrations">What the instructor shows.</param>
public sealed record BenchClass(
    ClassTime Time,
    int Teams,
    int PeoplePerTeam,
    IReadOnlyList<EquipmentCount> Equipment,
    OvenBank Ovens,
    IReadOnlyList<BenchBread> Breads,
    IReadOnlyList<Demonstration> Demonstrations
)
{
    /// <summary>What the teams are called, in the order of their numbers; empty where they have numbers alone.</summary>
    public IReadOnlyList<string> TeamNames { get; init; } = [];

    /// <summary>What is cooked before something else in the same fat, over the same plate or in the same water.</summary>
    public IReadOnlyList<CookedFirst> CookedFirst { get; init; } = [];

    /// <summary>What is cooked before a demonstration in the same fat or over the same plate.</summary>
    public IReadOnlyList<ShownBehind> ShownBehind { get; init; } = [];

    /// <summary>What a team is called behind the word team.</summary>
    /// <param name="team">Its number, from 1.</param>
    public string TeamName(int team) =>
        TeamNames.Count == Teams ? TeamNames[team - 1] : team.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>
    /// Who makes what: every team each bread of the teams, or those to whom it fell; the instructor each bread left to the demonstration.
    /// </summary>
    public IReadOnlyList<BenchLoad> Loads =>
        [
            .. Breads.SelectMany(
                (bread, at) =>
                    bread.LeftToInstructor
                        ? [new BenchLoad(Maker.Instructor, at)]
                        : TeamsOf(bread).Select(team => new BenchLoad(Maker.OfTeam(team), at))
            ),
        ];

    /// <summary>The teams that make a bread, where it is not left to the instructor.</summary>
    public IReadOnlyList<int> TeamsOf(BenchBread bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        return bread.Teams ?? [.. Enumerable.Range(1, Teams)];
    }

    /// <summary>
    /// The step of a bread that goes for one of another: itself, or the step of the same name where both are of one series. Null if there
    /// is none.
    /// </summary>
    public int? StepLike(int bread, StepOfBread of)
    {
        if (bread == of.Bread)
            return of.Step;
        if (Breads[bread].VariantOf is not { } series || series != Breads[of.Bread].Id)
            return null;
        var name = Breads[of.Bread].Steps[of.Step].Name;
        return Enumerable
            .Range(0, Breads[bread].Steps.Count)
            .Where(at => Breads[bread].Steps[at].Name == name)
            .Select(at => (int?)at)
            .FirstOrDefault();
    }

    /// <summary>How many pieces of a kind of equipment there are; null where they are not counted.</summary>
    public int? CountOf(EquipmentKind kind) => Of(kind)?.Count;

    /// <summary>The same, and null as well where one for each team was taken because nobody has counted.</summary>
    public int? CountedOf(EquipmentKind kind) => Of(kind) is { IsAssumed: false } counted ? counted.Count : null;

    private EquipmentCount? Of(EquipmentKind kind) => Equipment.FirstOrDefault(count => count.Kind == kind);

    /// <summary>
    /// The minute before which a step or a demonstration cannot begin, because what it takes is not hot yet; 0 if nothing of it is heated.
    /// </summary>
    public int HotFrom(IReadOnlyList<EquipmentCount> uses)
    {
        ArgumentNullException.ThrowIfNull(uses);
        return uses.Select(use => Of(use.Kind)?.HeatUpMinutes ?? 0).DefaultIfEmpty().Max();
    }

    internal BenchClass With(int bread, Func<BenchBread, BenchBread> change) =>
        this with
        {
            Breads = [.. Breads.Select((each, at) => at == bread ? change(each) : each)],
        };
}
