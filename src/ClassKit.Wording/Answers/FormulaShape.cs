using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Wording.Answers;

/// <summary>A formula as somebody reads it, whatever its dollars and needless brackets: nothing is called a student’s that does not stand in theirs.</summary>
/// <param name="text">With its <c>=</c>; null for a typed number.</param>
internal sealed class FormulaShape(string? text)
{
    private readonly string _shape = text is not null && CellFormula.Parse(text).Formula is { } formula ? Shape(formula) : "";

    /// <summary>Its tree; null for a typed number.</summary>
    public FormulaNode? Tree => _shape.Length == 0 ? null : CellFormula.Of("=" + _shape).Shape;

    /// <summary>True if it is written as another is.</summary>
    /// <param name="other">Over cells, without <c>=</c>.</param>
    public bool IsWritten(string other) => _shape.Equals(Shape(CellFormula.Of("=" + other)), StringComparison.OrdinalIgnoreCase);

    /// <summary>The names in it.</summary>
    public IReadOnlyList<string> Names => _shape.Length == 0 ? [] : CellFormula.Of("=" + _shape).Names;

    /// <summary>True if a piece stands in it, whatever the redundant brackets.</summary>
    /// <param name="piece">Over cells, without <c>=</c>.</param>
    public bool Holds(string piece) => Times(piece) > 0;

    /// <summary>How often it does.</summary>
    public int Times(string piece)
    {
        var (sought, times) = (Shape(CellFormula.Of("=" + piece)), 0);
        for (var at = _shape.IndexOf(sought, StringComparison.OrdinalIgnoreCase); at >= 0; at = _shape.IndexOf(sought, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (!GoesOn(_shape, at - 1, sought[0]) && !GoesOn(_shape, at + sought.Length, sought[^1])) times++;
        }
        return times;
    }

    /// <summary>True if it is another formula but for its brackets.</summary>
    /// <param name="right">Over cells, without <c>=</c>.</param>
    public bool DiffersInBracketsAloneFrom(string right) => _shape.Length > 0 && Bare(_shape).Equals(Bare(Shape(CellFormula.Of("=" + right))), StringComparison.OrdinalIgnoreCase);

    /// <summary>True if a cell's name or a number goes on beyond its end: C1 does not stand in C10.</summary>
    private static bool GoesOn(string text, int at, char end) => at >= 0 && at < text.Length && IsOfName(text[at]) && IsOfName(end);

    private static bool IsOfName(char letter) => char.IsLetterOrDigit(letter) || letter is '.' or '_';

    private static string Shape(CellFormula formula) => CellFormula.OfTree(formula.Shape).ToString()[1..].Replace("$", "", StringComparison.Ordinal);

    private static string Bare(string shape) => shape.Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal);
}
