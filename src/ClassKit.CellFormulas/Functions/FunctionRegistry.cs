using System.Collections.Frozen;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Every function we know, by name.</summary>
internal static class FunctionRegistry
{
    private static readonly FrozenDictionary<string, FunctionRow> Rows = new[]
    {
        Arithmetic.Rows,
        Clock.Rows,
        Conditional.Rows,
        Conversion.Rows,
        Counting.Rows,
        Dates.Rows,
        Financial.Rows,
        Information.Rows,
        Logic.Rows,
        Lookup.Rows,
        NumberTexts.Rows,
        Order.Rows,
        References.Rows,
        Regression.Rows,
        Rounding.Rows,
        Searching.Rows,
        Statistics.Rows,
        Texts.Rows,
        Trigonometry.Rows,
    }.SelectMany(rows => rows).ToFrozenDictionary(row => row.Name, StringComparer.Ordinal);

    public static IEnumerable<FunctionRow> All => Rows.Values;

    public static FunctionRow? Find(string name) => Rows.GetValueOrDefault(name);
}
