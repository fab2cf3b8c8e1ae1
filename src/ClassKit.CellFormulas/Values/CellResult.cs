namespace ClassKit.CellFormulas.Values;

/// <summary>What a cell shows of its formula's value.</summary>
internal static class CellResult
{
    /// <summary>The first element of an array; 0 for the value of an empty cell.</summary>
    public static CellValue Of(FormulaValue value) => Of(value.Array is { } array ? array[0, 0] : value.Scalar);

    public static CellValue Of(CellValue value) => value.IsBlank ? CellValue.FromNumber(0) : value;
}
