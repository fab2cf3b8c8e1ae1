using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.BenchSums.Inputs;

/// <summary>Inputs as sums declare them.</summary>
internal static class Ask
{
    /// <summary>What must be typed.</summary>
    public static SumInput<T> For<T>(string id, string label, Notation<T> notation, string example)
        where T : notnull => new(id, label, notation, example, InputNeed.Required);

    /// <summary>What is taken as usual unless something else is typed.</summary>
    public static SumInput<T> Usually<T>(string id, string label, Notation<T> notation, string usual)
        where T : notnull => new(id, label, notation, usual, InputNeed.Usual);

    /// <summary>What the sum does without.</summary>
    public static SumInput<T> Perhaps<T>(string id, string label, Notation<T> notation, string example)
        where T : notnull => new(id, label, notation, example, InputNeed.Optional);

    /// <summary>A formula, as typed in a line.</summary>
    public static SumInput<BakersFormula> Formula(string example) => For("formula", "the baker's formula", TypedFormula.Notation, example);

    /// <summary>How high the kitchen lies; at sea level if nothing is typed.</summary>
    public static SumInput<Altitude> Altitude { get; } = Usually("altitude", "the kitchen's altitude", Notations.Altitude, "0 m");

    /// <summary>The air over a kitchen, by its altitude.</summary>
    public static Computed<Pressure> Air(SumValues values) => StandardAtmosphere.PressureAt(values.Of(Altitude).Metres);
}
