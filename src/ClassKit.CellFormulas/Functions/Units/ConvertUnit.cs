namespace ClassKit.CellFormulas.Functions.Units;

/// <summary>A unit that CONVERT knows.</summary>
/// <param name="Symbol">As written in the formula; letter case counts.</param>
/// <param name="Kind">What it measures: only units of one kind convert into one another.</param>
/// <param name="Factor">How many of the kind's base units it is.</param>
/// <param name="Prefixes">Which prefixes may stand before it.</param>
/// <param name="Power">The power to which a prefix counts: 2 for areas, 3 for volumes.</param>
/// <param name="Zero">For temperatures, the base unit's value at the unit's zero.</param>
internal sealed record ConvertUnit(
    string Symbol,
    string Kind,
    double Factor,
    UnitPrefixes Prefixes = UnitPrefixes.None,
    int Power = 1,
    double Zero = 0
);
