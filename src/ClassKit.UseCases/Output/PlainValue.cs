using ClassKit.CellFormulas.Values;

namespace ClassKit.UseCases.Output;

/// <summary>Cell values as JSON has them.</summary>
internal static class PlainValue
{
    /// <summary>A number, true or false, a text (also for an error value), or null for a blank.</summary>
    public static object? Of(CellValue value) =>
        value.Kind switch
        {
            CellValueKind.Blank => null,
            CellValueKind.Number => value.Number,
            CellValueKind.Logical => value.Logical,
            CellValueKind.Text or CellValueKind.Error => value.ToString(),
        };
}
