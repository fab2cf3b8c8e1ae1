using System.Globalization;

namespace ClassKit.CellFormulas.Values;

/// <summary>The value of a single cell: blank, number, text, logical or error.</summary>
/// <remarks>
/// <c>default</c> is <see cref="Blank"/>. Reading a member of another kind than <see cref="Kind"/> says is a caller's bug and throws.
/// </remarks>
public readonly struct CellValue : IEquatable<CellValue>
{
    private readonly double _number;
    private readonly string? _text;

    private CellValue(CellValueKind kind, double number, string? text)
    {
        Kind = kind;
        _number = number;
        _text = text;
    }

    /// <summary>The value of an empty cell.</summary>
    public static CellValue Blank => default;

    /// <summary>Which kind of value this is.</summary>
    public CellValueKind Kind { get; }

    /// <summary>True for an empty cell.</summary>
    public bool IsBlank => Kind == CellValueKind.Blank;

    /// <summary>True for a number.</summary>
    public bool IsNumber => Kind == CellValueKind.Number;

    /// <summary>True for a text.</summary>
    public bool IsText => Kind == CellValueKind.Text;

    /// <summary>True for an error value.</summary>
    public bool IsError => Kind == CellValueKind.Error;

    /// <summary>The number.</summary>
    /// <exception cref="InvalidOperationException">The value is not a number.</exception>
    public double Number => Kind == CellValueKind.Number ? _number : throw Mismatch(CellValueKind.Number);

    /// <summary>The text.</summary>
    /// <exception cref="InvalidOperationException">The value is not a text.</exception>
    public string Text => Kind == CellValueKind.Text ? _text! : throw Mismatch(CellValueKind.Text);

    /// <summary>The logical value.</summary>
    /// <exception cref="InvalidOperationException">The value is not a logical.</exception>
    public bool Logical => Kind == CellValueKind.Logical ? _number != 0 : throw Mismatch(CellValueKind.Logical);

    /// <summary>The error.</summary>
    /// <exception cref="InvalidOperationException">The value is not an error.</exception>
    public CellError Error => Kind == CellValueKind.Error ? (CellError)(int)_number : throw Mismatch(CellValueKind.Error);

    /// <summary>A number; a value that no cell can hold (NaN, infinity) becomes <c>#NUM!</c>.</summary>
    public static CellValue FromNumber(double number) =>
        double.IsFinite(number) ? new(CellValueKind.Number, number, null) : FromError(CellError.Number);

    /// <summary>A text, which may be empty.</summary>
    public static CellValue FromText(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new(CellValueKind.Text, 0, text);
    }

    /// <summary>TRUE or FALSE.</summary>
    public static CellValue FromLogical(bool logical) => new(CellValueKind.Logical, logical ? 1 : 0, null);

    /// <summary>An error value.</summary>
    public static CellValue FromError(CellError error) => new(CellValueKind.Error, (int)error, null);

    /// <inheritdoc/>
    public bool Equals(CellValue other) => Kind == other.Kind && _number.Equals(other._number) && _text == other._text;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CellValue other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Kind, _number, _text);

    /// <summary>Same kind and same content.</summary>
    public static bool operator ==(CellValue left, CellValue right) => left.Equals(right);

    /// <summary>Different kind or different content.</summary>
    public static bool operator !=(CellValue left, CellValue right) => !left.Equals(right);

    /// <summary>The value as a cell shows it without a number format; numbers in the invariant culture.</summary>
    public override string ToString() =>
        Kind switch
        {
            CellValueKind.Blank => "",
            CellValueKind.Number => _number.ToString("R", CultureInfo.InvariantCulture),
            CellValueKind.Text => _text!,
            CellValueKind.Logical => Logical ? "TRUE" : "FALSE",
            CellValueKind.Error => CellErrorText.Of(Error),
        };

    private InvalidOperationException Mismatch(CellValueKind wanted) =>
        new($"This cell value is {Kind}, not {wanted}; ask {nameof(Kind)} first.");
}
