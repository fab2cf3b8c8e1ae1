using System.Collections.Frozen;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Printing;

/// <summary>
/// Functions that came after the file format and are stored with a prefix, so that older programs do not take them for names.
/// </summary>
/// <remarks>Source: MS-XLSX, 2.2.2 Formulas, future-function-list.</remarks>
internal static class NewerFunctions
{
    private static readonly FrozenSet<string> Names = new[]
    {
        "CEILING.MATH",
        "FLOOR.MATH",
        "CONCAT",
        "TEXTJOIN",
        "IFS",
        "SWITCH",
        "MAXIFS",
        "MINIFS",
        "IFNA",
        "XOR",
        "XLOOKUP",
        "XMATCH",
        "LET",
        "DAYS",
        "NUMBERVALUE",
        "PERCENTILE.INC",
        "PERCENTILE.EXC",
        "QUARTILE.INC",
        "QUARTILE.EXC",
        "PERCENTRANK.INC",
        "PERCENTRANK.EXC",
        "RANK.EQ",
        "RANK.AVG",
        "MODE.SNGL",
        "MODE.MULT",
        "STDEV.S",
        "STDEV.P",
        "VAR.S",
        "VAR.P",
        "COVARIANCE.P",
        "COVARIANCE.S",
        "FORECAST.LINEAR",
        "UNICHAR",
        "UNICODE",
        "ISFORMULA",
        "FORMULATEXT",
        "SHEET",
        "SHEETS",
        "COMBINA",
        "PERMUTATIONA",
        "SEC",
        "CSC",
        "COT",
        "ACOT",
        "SECH",
        "CSCH",
        "COTH",
        "ACOTH",
        "ARABIC",
        "BASE",
        "DECIMAL",
        "BITAND",
        "BITOR",
        "BITXOR",
        "BITLSHIFT",
        "BITRSHIFT",
        "FILTER",
        "SORT",
        "SORTBY",
        "UNIQUE",
        "SEQUENCE",
        "RANDARRAY",
        "ISOWEEKNUM",
        "PDURATION",
        "RRI",
        "SKEW.P",
        "GAMMA",
        "PHI",
        "GAUSS",
        "LAMBDA",
        "CEILING.PRECISE",
        "FLOOR.PRECISE",
        "AGGREGATE",
        "VSTACK",
        "HSTACK",
        "TAKE",
        "DROP",
        "TOCOL",
        "TOROW",
        "TEXTBEFORE",
        "TEXTAFTER",
        "TEXTSPLIT",
        "CHOOSEROWS",
        "CHOOSECOLS",
        "EXPAND",
        "WRAPROWS",
        "WRAPCOLS",
        "MUNIT",
    }.ToFrozenSet(StringComparer.Ordinal);

    // Two of them are stored with a second prefix.
    private static readonly FrozenSet<string> Worksheet = new[] { "FILTER", "SORT" }.ToFrozenSet(StringComparer.Ordinal);

    public static bool Contains(string function) => Names.Contains(function);

    public static string Prefix(string function) => Worksheet.Contains(function) ? FilePrefixes.Function + "_xlws." : FilePrefixes.Function;
}
