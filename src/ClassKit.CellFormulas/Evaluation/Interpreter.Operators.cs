using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Operators, on single values and element by element.</summary>
internal abstract partial class Interpreter
{
    private FormulaValue Compute(BinaryNode binary)
    {
        // Chains such as A1+A2+A3 lean to the left: follow them with a loop where they are long.
        if (!System.Runtime.CompilerServices.RuntimeHelpers.TryEnsureSufficientExecutionStack()) return TooDeep();
        var left = Operand(binary.Left);
        var right = Operand(binary.Right);
        if (left.IsScalar && right.IsScalar)
        {
            var value = Operators.Apply(binary.Operator, left.Scalar, right.Scalar, Meter, Limits.TextLength, Dates);
            Meter.TakeForMade(value);
            return value;
        }

        var (a, b) = (Array(left), Array(right));
        var result = Shape(a, b);
        if (result is null) return CellError.Value;
        for (var row = 0; row < result.Rows && !Halted; row++)
        {
            for (var column = 0; column < result.Columns && !Halted; column++)
            {
                var value = Operators.Apply(binary.Operator, a.Broadcast(row, column), b.Broadcast(row, column), Meter, Limits.TextLength, Dates);
                Meter.TakeForMade(value);
                result[row, column] = value;
            }
        }

        return result;
    }

    /// <summary>An empty array as large as both, or null if that is too large.</summary>
    private ArrayValue? Shape(ArrayValue a, ArrayValue b)
    {
        var (rows, columns) = (Common(a.Rows, b.Rows), Common(a.Columns, b.Columns));
        return TooLarge((long)rows * columns) ? null : new(Meter, rows, columns);
    }

    private static int Common(int a, int b) => Math.Max(a, b);

    private FormulaValue Apply(PrefixNode prefix) => prefix.Operator switch
    {
        PrefixOperator.Plus => Operand(prefix.Operand),
        PrefixOperator.Minus => Map(Operand(prefix.Operand), Operators.Negate),
        PrefixOperator.Intersect => Evaluate(prefix.Operand) is var value && value.Reference is { } reference ? Single(reference) : value.Array is { } array ? array[0, 0] : value,
    };

    /// <summary>Applies an operation to a value or to each element.</summary>
    private FormulaValue Map(FormulaValue value, Func<CellValue, Meter, CellValue> operation)
    {
        if (value.Array is not { } array) return operation(value.Scalar, Meter);
        if (TooLarge(array.Count)) return CellError.Value;
        var result = new ArrayValue(Meter, array.Rows, array.Columns);
        for (var row = 0; row < array.Rows; row++)
        {
            for (var column = 0; column < array.Columns; column++) result[row, column] = operation(array[row, column], Meter);
        }

        return result;
    }

    private FormulaValue Combine(BinaryNode binary)
    {
        var left = Evaluate(binary.Left);
        var right = Evaluate(binary.Right);
        if (left.IsError) return left;
        if (right.IsError) return right;
        if (left.Reference is not { } a || right.Reference is not { } b) return CellError.Value;
        switch (binary.Operator)
        {
            case BinaryOperator.Union:
                Spend((a.Areas.Length + b.Areas.Length) / 8);
                return a.Areas.Length + b.Areas.Length > 1000 ? Unsupported("a union of more than 1000 areas") : new Reference([.. a.Areas, .. b.Areas]);
            case BinaryOperator.Intersection:
                Spend((long)a.Areas.Length * b.Areas.Length);
                var common = new List<Area>();
                foreach (var area in a.Areas)
                {
                    foreach (var other in b.Areas)
                    {
                        if (area.Intersect(other) is { } both) common.Add(both);
                    }
                }

                return common.Count == 0 ? CellError.Null : new Reference([.. common]);
            default:
                if (a.Areas.Length > 1 || b.Areas.Length > 1 || a.First.Sheet != b.First.Sheet) return CellError.Value;
                var (first, last) = (a.First, b.First);
                return new Reference(new Area(
                    first.Sheet, Math.Min(first.Top, last.Top), Math.Min(first.Left, last.Left), Math.Max(first.Bottom, last.Bottom), Math.Max(first.Right, last.Right)));
        }
    }

    private FormulaValue Locate(ReferenceNode node)
    {
        var sheet = SheetIndex(node.Sheet);
        if (sheet < 0) return CellError.Reference;
        if (Move(node.First) is not { } first) return CellError.Reference;
        if (node.Last is not { } written) return new Reference(new Area(sheet, first.Row, first.Column, first.Row, first.Column));
        if (Move(written) is not { } last) return CellError.Reference;
        if (first.Row == 0) (first, last) = (first with { Row = 1 }, last with { Row = CellAddress.LastRow });
        if (first.Column == 0) (first, last) = (first with { Column = 1 }, last with { Column = CellAddress.LastColumn });
        return new Reference(Area.Between(sheet, first.Row, first.Column, last.Row, last.Column));
    }

    /// <summary>The quick way for the commonest operand, a single cell.</summary>
    private CellValue Cell(ReferenceNode node)
    {
        Spend(1);
        if (Halted) return default;
        var sheet = SheetIndex(node.Sheet);
        return sheet >= 0 && Move(node.First) is { } corner ? Read(sheet, corner.Row, corner.Column) : CellValue.FromError(CellError.Reference);
    }

    private Corner? Move(Corner corner)
    {
        var (rows, columns) = Offset;
        if (rows == 0 && columns == 0) return corner;

        // A relative reference in a defined name wraps around the edges of the sheet.
        return corner with
        {
            Row = corner.Row == 0 || corner.RowFixed ? corner.Row : Wrap(corner.Row + rows, CellAddress.LastRow),
            Column = corner.Column == 0 || corner.ColumnFixed ? corner.Column : Wrap(corner.Column + columns, CellAddress.LastColumn),
        };
    }

    private static int Wrap(int at, int last) => (at - 1 + last) % last + 1;

    private FormulaValue TooDeep() => Deepen() ? CellError.Value : Unsupported("formulas nested too deeply");

    /// <summary>Asks for another try with a shorter stack; false if that cannot help.</summary>
    protected virtual bool Deepen() => false;
}
