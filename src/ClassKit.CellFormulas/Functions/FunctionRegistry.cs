using System.Collections.Frozen;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Functions.Units;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Every function we know, by name.</summary>
internal static class FunctionRegistry
{
    private static readonly FrozenDictionary<string, FunctionRow> Rows = new[]
    {
        Arithmetic.Rows,
        Bases.Rows,
        CashFlows.Rows,
        Clock.Rows,
        Conditional.Rows,
        Conversion.Rows,
        Counting.Rows,
        Databases.Rows,
        Dates.Rows,
        Depreciation.Rows,
        Distributions.Rows,
        Financial.Rows,
        Information.Rows,
        Intervals.Rows,
        Loans.Rows,
        Logic.Rows,
        Lookup.Rows,
        Matrices.Rows,
        NumberTexts.Rows,
        Order.Rows,
        References.Rows,
        Regression.Rows,
        Reshaping.Rows,
        Rounding.Rows,
        Searching.Rows,
        Sorting.Rows,
        Statistics.Rows,
        Subtotals.Rows,
        Surroundings.Rows,
        TextParts.Rows,
        Texts.Rows,
        Trigonometry.Rows,
        Workdays.Rows,
    }
        .SelectMany(rows => rows)
        .ToFrozenDictionary(row => row.Name, StringComparer.Ordinal);

    private static readonly FrozenSet<string> Families = Rows.Keys.Select(name => name.Split('.')[0]).ToFrozenSet(StringComparer.Ordinal);

    public static IEnumerable<FunctionRow> All => Rows.Values;

    public static FunctionRow? Find(string name) => Rows.GetValueOrDefault(name);

    /// <summary>True for what stands before the point in a function's name, or is all of it.</summary>
    public static bool IsFamily(string part) => Families.Contains(part);
}
