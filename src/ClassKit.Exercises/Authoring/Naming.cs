using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Exercises.Authoring;

/// <summary>What ids of exercises, givens and parts may look like, since they become names in cell formulas.</summary>
public static partial class Naming
{
    /// <summary>What a valid id is, in words.</summary>
    public const string Rule =
        "lower-case letters, digits and underscores, starting with a letter, and nothing that a spreadsheet takes for a cell, a row or a column: b5, r1c1, or r and c alone";

    /// <summary>True for an id that a spreadsheet accepts as a defined name and never takes for a cell.</summary>
    public static bool IsValid(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Shape().IsMatch(id)
            && !RowColumnStyle().IsMatch(id)
            && !CellAddress.TryParse("", id, out _)
            && id is not ("true" or "false");
    }

    /// <summary>The workbook-wide name of an exercise's given or answer cell.</summary>
    public static string DefinedName(string exercise, string id) => $"{exercise}_{id}";

    [GeneratedRegex(@"\A[a-z][a-z0-9_]*\z")]
    private static partial Regex Shape();

    [GeneratedRegex("^r[0-9]*(c[0-9]*)?$|^c[0-9]*$")]
    private static partial Regex RowColumnStyle();
}
