using System.Diagnostics.CodeAnalysis;

namespace ClassKit.CellFormulas.Values;

/// <summary>How error values are written in cells, formulas and files.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.17.3.</remarks>
public static class CellErrorText
{
    private static readonly Dictionary<string, CellError> ByText = Enum.GetValues<CellError>()
        .ToDictionary(Of, StringComparer.OrdinalIgnoreCase);

    /// <summary>The text of an error, such as <c>#DIV/0!</c>.</summary>
    public static string Of(CellError error) =>
        error switch
        {
            CellError.Null => "#NULL!",
            CellError.DivideByZero => "#DIV/0!",
            CellError.Value => "#VALUE!",
            CellError.Reference => "#REF!",
            CellError.Name => "#NAME?",
            CellError.Number => "#NUM!",
            CellError.NotAvailable => "#N/A",
        };

    /// <summary>Reads an error from its text, in any letter case.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out CellError error)
    {
        error = default;
        return text is not null && ByText.TryGetValue(text, out error);
    }
}
