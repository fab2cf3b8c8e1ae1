using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Wording.Answers;

/// <summary>
/// A formula as somebody reads it, whatever its dollars and needless brackets, those around sums in sums among them: nothing is called a
/// student’s that does not stand in theirs.
/// </summary>
/// <param name="text">With its <c>=</c>; null for a typed number.</param>
internal sealed class FormulaShape(string? text)
{
    private readonly string _shape = text is not null && CellFormula.Parse(text).Formula is { } formula ? Shape(formula) : "";

    /// <summary>It with no brackets that change nothing, without <c>=</c>; empty for a typed number.</summary>
    public string Plain => _shape;

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
    public int Times(string piece) => Count(Shape(CellFormula.Of("=" + piece)));

    private int Count(string sought)
    {
        var times = 0;
        for (
            var at = _shape.IndexOf(sought, StringComparison.OrdinalIgnoreCase);
            at >= 0;
            at = _shape.IndexOf(sought, at + 1, StringComparison.OrdinalIgnoreCase)
        )
        {
            if (!GoesOn(_shape, at - 1, sought[0]) && !GoesOn(_shape, at + sought.Length, sought[^1]))
                times++;
        }
        return times;
    }

    /// <summary>True if some text stands in it as it is, and neither a name or number goes on behind it nor a power.</summary>
    /// <param name="text">Such as <c>*C8</c>.</param>
    public bool HasText(string text) => Count(text) > Count(text + "^");

    /// <summary>True if it is another formula but for its brackets.</summary>
    /// <param name="right">Over cells, without <c>=</c>.</param>
    public bool DiffersInBracketsAloneFrom(string right) =>
        _shape.Length > 0 && Bare(_shape).Equals(Bare(Shape(CellFormula.Of("=" + right))), StringComparison.OrdinalIgnoreCase);

    /// <summary>True if a cell's name or a number goes on beyond its end: C1 does not stand in C10.</summary>
    private static bool GoesOn(string text, int at, char end) => at >= 0 && at < text.Length && IsOfName(text[at]) && IsOfName(end);

    private static bool IsOfName(char letter) => char.IsLetterOrDigit(letter) || letter is '.' or '_';

    /// <summary>The formula of a node, without <c>=</c>.</summary>
    public static string Text(FormulaNode node) => CellFormula.OfTree(node).ToString()[1..];

    private static string Shape(CellFormula formula) => Text(InOneRow(formula.Shape)).Replace("$", "", StringComparison.Ordinal);

    /// <summary>
    /// A sum in a sum, and a product in a product, without the brackets that change nothing: <c>a*(b*c)</c> is read as <c>a*b*c</c>.
    /// </summary>
    private static FormulaNode InOneRow(FormulaNode node) =>
        node switch
        {
            BinaryNode binary => Joined(binary with { Left = InOneRow(binary.Left), Right = InOneRow(binary.Right) }),
            PrefixNode prefix => prefix with { Operand = InOneRow(prefix.Operand) },
            PercentNode percent => percent with { Operand = InOneRow(percent.Operand) },
            CallNode call => call with { Arguments = [.. call.Arguments.Select(InOneRow)] },
            _ => node,
        };

    private static BinaryNode Joined(BinaryNode binary) =>
        (binary.Operator, binary.Right) switch
        {
            (BinaryOperator.Add, BinaryNode { Operator: BinaryOperator.Add or BinaryOperator.Subtract } inner) => inner with
            {
                Left = Joined(binary with { Right = inner.Left }),
            },
            (BinaryOperator.Multiply, BinaryNode { Operator: BinaryOperator.Multiply or BinaryOperator.Divide } inner) => inner with
            {
                Left = Joined(binary with { Right = inner.Left }),
            },
            _ => binary,
        };

    private static string Bare(string shape) => shape.Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal);
}
