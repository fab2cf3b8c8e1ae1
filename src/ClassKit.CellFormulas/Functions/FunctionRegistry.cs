using System.Collections.Frozen;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Every function we know, by name.</summary>
internal static class FunctionRegistry
{
    private static readonly FrozenDictionary<string, FunctionRow> Rows = new[]
    {
        Arithmetic.Rows,
        Rounding.Rows,
        Statistics.Rows,
        Logic.Rows,
    }.SelectMany(rows => rows).ToFrozenDictionary(row => row.Name, StringComparer.Ordinal);

    public static IEnumerable<FunctionRow> All => Rows.Values;

    public static FunctionRow? Find(string name) => Rows.GetValueOrDefault(name);
}
