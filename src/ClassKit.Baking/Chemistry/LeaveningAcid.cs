using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>An acid that sets carbon dioxide free from soda.</summary>
/// <param name="Id">Lower-case letters, digits and underscores.</param>
/// <param name="Name">As the trade calls it.</param>
/// <param name="NeutralizingValue">Grams of soda that 100 g of the acid neutralise; above 0. It says nothing about how fast.</param>
/// <param name="Source">Where the value comes from.</param>
/// <remarks>Definition: AACC Approved Method 02-32.</remarks>
public sealed record LeaveningAcid(string Id, string Name, double NeutralizingValue, string Source)
{
    /// <summary>
    /// When it acts. H. McGee, On Food and Cooking (2004), "The acid components of baking powders"; lactic acid, AMCP and GDL from memory.
    /// </summary>
    public ReleaseKind Release { get; private init; }

    /// <summary>The dough temperature in °C at which it wakes; null if it does not wait for heat. The same source.</summary>
    public PublishedRange? HeatsFrom { get; private init; }

    private const string Trade = "BAKERpedia, \"Leavening Acids\"";
    private const string Stoichiometry = "stoichiometry, IUPAC atomic weights";

    /// <summary>Cream of tartar, potassium bitartrate.</summary>
    public static LeaveningAcid CreamOfTartar { get; } =
        new("cream_of_tartar", "Cream of tartar", 45, Trade) { Release = ReleaseKind.AtMixing };

    /// <summary>Glucono-delta-lactone.</summary>
    public static LeaveningAcid GluconoDeltaLactone { get; } =
        new("gdl", "Glucono-delta-lactone (GDL)", 45, Trade) { Release = ReleaseKind.AfterMixing };

    /// <summary>Dicalcium phosphate dihydrate.</summary>
    public static LeaveningAcid DicalciumPhosphate { get; } =
        new("dcpd", "Dicalcium phosphate dihydrate (DCPD)", 33, Trade) { Release = ReleaseKind.OnHeating, HeatsFrom = new(57, 60) };

    /// <summary>Sodium acid pyrophosphate.</summary>
    public static LeaveningAcid SodiumAcidPyrophosphate { get; } =
        new("sapp", "Sodium acid pyrophosphate (SAPP)", 72, Trade) { Release = ReleaseKind.AfterMixing };

    /// <summary>Monocalcium phosphate monohydrate.</summary>
    public static LeaveningAcid MonocalciumPhosphate { get; } =
        new("mcp", "Monocalcium phosphate monohydrate (MCP)", 80, Trade) { Release = ReleaseKind.AtMixing };

    /// <summary>Anhydrous monocalcium phosphate.</summary>
    public static LeaveningAcid AnhydrousMonocalciumPhosphate { get; } =
        new("amcp", "Anhydrous monocalcium phosphate (AMCP)", 83, Trade) { Release = ReleaseKind.AfterMixing };

    /// <summary>Sodium aluminium phosphate.</summary>
    public static LeaveningAcid SodiumAluminiumPhosphate { get; } =
        new("salp", "Sodium aluminium phosphate (SALP)", 100, Trade) { Release = ReleaseKind.OnHeating, HeatsFrom = new(38, 40) };

    /// <summary>Sodium aluminium sulphate.</summary>
    public static LeaveningAcid SodiumAluminiumSulphate { get; } =
        new("sas", "Sodium aluminium sulphate (SAS)", 104, Trade) { Release = ReleaseKind.MostlyOnHeating };

    /// <summary>Lactic acid, as in buttermilk and yogurt: one hydrogen.</summary>
    public static LeaveningAcid LacticAcid { get; } =
        new("lactic_acid", "Lactic acid", Stoichiometric(1, MolarMass.LacticAcid), Stoichiometry) { Release = ReleaseKind.AtMixing };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<LeaveningAcid> All { get; } =
    [
        CreamOfTartar,
        GluconoDeltaLactone,
        DicalciumPhosphate,
        SodiumAcidPyrophosphate,
        MonocalciumPhosphate,
        AnhydrousMonocalciumPhosphate,
        SodiumAluminiumPhosphate,
        SodiumAluminiumSulphate,
        LacticAcid,
    ];

    /// <summary>
    /// The neutralising value that a formula gives: right for organic acids and pure salts, not for commercial phosphates.
    /// </summary>
    /// <param name="hydrogens">How many of the molecule's hydrogens react.</param>
    /// <param name="molarMass">In g/mol.</param>
    public static double Stoichiometric(double hydrogens, double molarMass) =>
        PerHundred.Of(hydrogens * MolarMass.SodiumBicarbonate, molarMass);

    /// <summary>The acid that neutralises a mass of soda: 100 × soda / neutralising value.</summary>
    /// <param name="soda">Not negative.</param>
    public Computed<Mass> For(Mass soda)
    {
        if (WhatIsWrong(soda, "soda") is { } odd)
            return odd;
        var acid = Matching(soda);
        return Explanation
            .Of(
                $"{Name} for baking soda",
                "acid",
                "100 × soda / neutralising value",
                $"100 × {Figures.Grams(soda)} / {Figures.Exact(NeutralizingValue)}",
                Figures.Grams(acid),
                $"Neutralising value: {Source}."
            )
            .For(acid);
    }

    /// <summary>The soda that a mass of the acid neutralises: acid × neutralising value / 100.</summary>
    /// <param name="acid">Not negative.</param>
    public Computed<Mass> SodaFor(Mass acid)
    {
        if (WhatIsWrong(acid, Name) is { } odd)
            return odd;
        var soda = SodaMatching(acid);
        return Explanation
            .Of(
                $"Baking soda for {Name}",
                "soda",
                "acid × neutralising value / 100",
                $"{Figures.Grams(acid)} × {Figures.Exact(NeutralizingValue)} / 100",
                Figures.Grams(soda),
                $"Neutralising value: {Source}."
            )
            .For(soda);
    }

    /// <summary>Bare arithmetic, for masses that have been looked at.</summary>
    internal Mass Matching(Mass soda) => soda * (100 / NeutralizingValue);

    /// <summary>Bare arithmetic, for masses that have been looked at.</summary>
    internal Mass SodaMatching(Mass acid) => acid * PerHundred.Share(NeutralizingValue);

    internal Impossibility? WhatIsWrong(Mass mass, string what) =>
        Sanity.Mass(mass, what, "negative-mass", orNone: true)
        ?? Sanity.Number(NeutralizingValue, 1, 500, $"Neutralising value of {Name}", "bad-neutralising-value");
}
