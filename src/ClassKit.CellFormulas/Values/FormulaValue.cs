namespace ClassKit.CellFormulas.Values;

/// <summary>What a part of a formula evaluates to: a single value, an array, or a reference to cells.</summary>
internal readonly struct FormulaValue
{
    private readonly object? _compound;

    private FormulaValue(CellValue scalar, object? compound)
    {
        Scalar = scalar;
        _compound = compound;
    }

    /// <summary>The single value; blank for an array or a reference.</summary>
    public CellValue Scalar { get; }

    public ArrayValue? Array => _compound as ArrayValue;

    public Reference? Reference => _compound as Reference;

    public bool IsScalar => _compound is null;

    public bool IsError => IsScalar && Scalar.IsError;

    public static implicit operator FormulaValue(CellValue value) => new(value, null);

    public static implicit operator FormulaValue(double number) => new(CellValue.FromNumber(number), null);

    public static implicit operator FormulaValue(string text) => new(CellValue.FromText(text), null);

    public static implicit operator FormulaValue(bool logical) => new(CellValue.FromLogical(logical), null);

    public static implicit operator FormulaValue(CellError error) => new(CellValue.FromError(error), null);

    public static implicit operator FormulaValue(ArrayValue array) => new(default, array);

    public static implicit operator FormulaValue(Reference reference) => new(default, reference);
}
