using System.Diagnostics;
using System.Runtime.CompilerServices;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Walks a syntax tree and computes its value.</summary>
internal sealed class Interpreter : IEvaluator
{
    private readonly NameSource _names;
    private readonly LetBindings _let = new();
    private readonly Addressing _addressing;
    private readonly Elementwise _elementwise;
    private FunctionCalls? _calls;

    /// <summary>Puts an interpreter together.</summary>
    /// <param name="run">What the evaluation may take.</param>
    /// <param name="cells">Where cells come from.</param>
    /// <param name="names">Where names come from.</param>
    public Interpreter(Run run, CellSource cells, NameSource names)
    {
        (Run, Cells, _names) = (run, cells, names);
        Rectangles = new(run, cells);
        _addressing = new(run, cells, names);
        _elementwise = new(run, Rectangles);
    }

    public Run Run { get; }

    public CellSource Cells { get; }

    public Rectangles Rectangles { get; }

    public bool WantsArrays { get; private set; }

    /// <summary>Makes ready for an evaluation with its own count of steps.</summary>
    public void Start(CancellationToken cancellation)
    {
        Run.Start(cancellation);
        WantsArrays = false;
        _let.Hide();
    }

    /// <summary>The value of a formula of its own, which does not see what LET binds around the place that asks for it.</summary>
    public FormulaValue Afresh(FormulaNode root, bool arrayMode)
    {
        var (bound, mode) = (_let.Hide(), WantsArrays);
        WantsArrays = arrayMode;
        var value = Evaluate(root);
        _let.Show(bound);
        WantsArrays = mode;
        return value;
    }

    public FormulaValue Evaluate(FormulaNode node)
    {
        Run.Spend(1);
        if (Run.Halted)
            return CellError.Value;
        switch (node)
        {
            case NumberNode number:
                return CellValue.FromNumber(number.Value);
            case ReferenceNode reference:
                return _addressing.Locate(reference);
            case NameNode name:
                return _let.TryGet(name, out var bound) ? bound : _names.Value(name);
            case BinaryNode binary:
                return Apply(binary);
            case CallNode call:
                return Apply(call);
            case GroupNode group:
                return Evaluate(group.Inner);
            case PrefixNode prefix:
                return Apply(prefix);
            case PercentNode percent:
                return _elementwise.Map(Operand(percent.Operand), Operators.Percent);
            case TextNode text:
                return text.Value;
            case LogicalNode logical:
                return logical.Value;
            case ErrorNode error:
                return error.Error;
            case ArrayNode array:
                return new ArrayValue(Run.Meter, array.Rows, array.Columns, [.. array.Elements]);
            case SpillNode spill:
                var anchor = Evaluate(spill.Operand);
                return anchor.Reference is { IsCell: true } cell ? _names.Spill(cell)
                    : anchor.IsError ? anchor
                    : CellError.Reference;
            case TableNode table:
                return _names.Table(table);
            case MissingNode:
                return default(CellValue);
            case UnsupportedNode unsupported:
                return Run.Unsupported(new Obstacle.NotEvaluated(unsupported.Construct, unsupported.Text));
            default:
                throw new UnreachableException($"No value is known for {node.GetType().Name}.");
        }
    }

    public FormulaValue Operand(FormulaNode node)
    {
        switch (node)
        {
            case NumberNode number:
                Run.Spend(1);
                return CellValue.FromNumber(number.Value);
            case ReferenceNode { Last: null } reference:
                return _addressing.Cell(reference);
            case NameNode name when _let.IsEmpty && _names.TryCell(name, out var cell):
                return cell;
        }

        var value = Evaluate(node);
        return value.Reference is { } located ? Resolve(located) : value;
    }

    public FormulaValue InArrayMode(FormulaNode node)
    {
        var before = WantsArrays;
        WantsArrays = true;
        var value = Evaluate(node);
        WantsArrays = before;
        return value;
    }

    /// <summary>What a reference gives where a value is wanted.</summary>
    private FormulaValue Resolve(Reference reference)
    {
        if (WantsArrays && !reference.IsCell)
            return reference.Areas.Length == 1 ? Rectangles.Array(reference.First) : CellError.Value;
        return Rectangles.Single(reference);
    }

    private FormulaValue Apply(BinaryNode binary)
    {
        if (binary.Operator <= BinaryOperator.Union)
            return _addressing.Combine(binary.Operator, Evaluate(binary.Left), Evaluate(binary.Right));
        return RuntimeHelpers.TryEnsureSufficientExecutionStack()
            ? _elementwise.Compute(binary.Operator, Operand(binary.Left), Operand(binary.Right))
            : TooDeep();
    }

    private FormulaValue Apply(CallNode call)
    {
        if (!RuntimeHelpers.TryEnsureSufficientExecutionStack())
            return TooDeep();
        return call.Name == "LET" ? _let.Evaluate(call, this) : (_calls ??= new(this, _names, _let)).Apply(call);
    }

    private FormulaValue Apply(PrefixNode prefix) =>
        prefix.Operator switch
        {
            PrefixOperator.Plus => Operand(prefix.Operand),
            PrefixOperator.Minus => _elementwise.Map(Operand(prefix.Operand), Operators.Negate),
            PrefixOperator.Intersect => Evaluate(prefix.Operand) is var value && value.Reference is { } reference
                ? Rectangles.Single(reference)
            : value.Array is { } array ? array[0, 0]
            : value,
        };

    private FormulaValue TooDeep() => Cells.Deepen() ? CellError.Value : Run.Unsupported(new Obstacle.NestedTooDeeply());
}
