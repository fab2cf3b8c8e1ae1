namespace ClassKit.BenchPlans.Classes;

/// <summary>A kind of equipment that teams share and that one load at a time uses.</summary>
/// <param name="One">Its name in the singular: <c>griddle</c>.</param>
/// <param name="Many">Its name in the plural: <c>griddles</c>.</param>
public sealed record EquipmentKind(string One, string Many)
{
    /// <summary>A scale for flour and portions. Where a profile counts none, every team has one.</summary>
    public static EquipmentKind Scale { get; } = new("scale", "scales");

    /// <summary>A finer scale for salt and leavening. Where a profile counts none, every team has one.</summary>
    public static EquipmentKind SmallScale { get; } = new("small scale", "small scales");

    /// <summary>A place in a proofer, or in a box that is kept warm.</summary>
    public static EquipmentKind ProofingPlace { get; } = new("proofing place", "proofing places");

    /// <summary>A burner, for one pan.</summary>
    public static EquipmentKind Burner { get; } = new("burner", "burners");

    /// <summary>A kettle, for water that is poured boiling.</summary>
    public static EquipmentKind Kettle { get; } = new("kettle", "kettles");

    /// <summary>A steamer, for as many loads as it has places.</summary>
    public static EquipmentKind Steamer { get; } = new("steamer", "steamers");

    /// <summary>A griddle or hot plate.</summary>
    public static EquipmentKind Griddle { get; } = new("griddle", "griddles");

    /// <summary>A deep fryer, or a pot of hot fat.</summary>
    public static EquipmentKind Fryer { get; } = new("fryer", "fryers");

    /// <summary>A pizza oven.</summary>
    public static EquipmentKind PizzaOven { get; } = new("pizza oven", "pizza ovens");

    /// <summary>An oven that lets steam in.</summary>
    public static EquipmentKind CombiOven { get; } = new("combi oven", "combi ovens");

    /// <summary>A microwave oven.</summary>
    public static EquipmentKind Microwave { get; } = new("microwave", "microwaves");

    /// <summary>A freezer as a household has it: for a load of a team.</summary>
    public static EquipmentKind Freezer { get; } = new("freezer", "freezers");

    /// <summary>A freezer that blows cold air, or a blast chiller set to freeze.</summary>
    public static EquipmentKind BlastFreezer { get; } = new("blast freezer", "blast freezers");

    /// <summary>Every kind that lessons and class profiles may name. Ovens are apart: they have temperatures.</summary>
    public static IReadOnlyList<EquipmentKind> All { get; } =
    [
        new("bench", "benches"),
        BlastFreezer,
        Burner,
        CombiOven,
        Freezer,
        Fryer,
        Griddle,
        Kettle,
        Microwave,
        new("mixer", "mixers"),
        PizzaOven,
        ProofingPlace,
        Scale,
        new("sheeter", "sheeters"),
        SmallScale,
        Steamer,
    ];

    /// <summary>One place of it, where it takes several loads at once: <c>steamer place</c>.</summary>
    public EquipmentKind Place => new($"{One} place", $"{One} places") { PlaceOf = this };

    /// <summary>What it is a place of; null of a thing itself, and of a place that a profile counts by itself.</summary>
    public EquipmentKind? PlaceOf { get; init; }

    /// <summary>The kind of a name, singular or plural, in upper or lower case; null if it is not known.</summary>
    public static EquipmentKind? Find(string name) =>
        All.FirstOrDefault(kind =>
            kind.One.Equals(name, StringComparison.OrdinalIgnoreCase) || kind.Many.Equals(name, StringComparison.OrdinalIgnoreCase)
        );

    /// <summary>A number of them in words: <c>1 griddle</c>, <c>2 griddles</c>.</summary>
    public string Counted(int count) => FormattableString.Invariant($"{count} {(count == 1 ? One : Many)}");

    /// <inheritdoc/>
    public override string ToString() => One;
}
