namespace ClassKit.CellFormulas.Functions.Units;

/// <summary>Which prefixes a unit takes.</summary>
internal enum UnitPrefixes
{
    None,

    /// <summary>Powers of ten: k, m, da.</summary>
    Decimal,

    /// <summary>Powers of ten, and powers of 1024: Ki, Mi.</summary>
    Binary,
}
