using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Mixing;

/// <summary>What a mixed dough or batter comes to in a kitchen, and how warm something has to go in for that.</summary>
/// <param name="Parts">The ingredients in the formula's order, each as warm as it goes in.</param>
/// <param name="Mixed">What comes out: one value for every page, within what thermometer and bowl make of it: as asked where it comes to that, else to the whole
/// degree of the class's probes.</param>
public sealed record MixBalance(IReadOnlyList<MixPart> Parts, Band<Temperature> Mixed)
{
    /// <summary>Why the mix does not come to what the formula asks for; null where it does, or where nothing is asked.</summary>
    public Impossibility? OutOfReach { get; init; }

    /// <summary>True if a fat that went in melted is cold enough in the mix to set again.</summary>
    public bool SetsFat { get; init; }

    /// <summary>True if a fat is melted with what is warmed, and that goes in cooler than the fat melts.</summary>
    public bool CoolsMeltedFat { get; init; }

    /// <summary>What is warmed to one temperature; empty where nothing is.</summary>
    public IReadOnlyList<MixPart> Warmed => Of(HeatKind.Warmed);

    /// <summary>The parts of one kind.</summary>
    public IReadOnlyList<MixPart> Of(HeatKind kind) => [.. Parts.Where(part => part.Kind == kind)];

    /// <summary>True if the mix may be at a temperature by what is asked for.</summary>
    public bool Allows(Temperature asked) => asked.Celsius >= Mixed.Low.Celsius && asked.Celsius <= Mixed.High.Celsius;

    /// <summary>The balance, with the default assumptions.</summary>
    public static Computed<MixBalance> Of(LessonFormula formula, Temperature kitchen) => Of(formula, kitchen, MixSettings.Default);

    /// <summary>The balance of a formula in a kitchen, or why there is none.</summary>
    public static Computed<MixBalance> Of(LessonFormula formula, Temperature kitchen, MixSettings settings)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(settings);
        return new MixBalancing(formula, kitchen, settings).Balance();
    }
}
