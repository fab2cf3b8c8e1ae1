using System.Globalization;
using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Printing;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Functions about places: where a cell is, and the cell at a place (OpenFormula 1.3, 6.14).</summary>
internal static class References
{
    /// <summary>What it takes to read a short formula, in steps.</summary>
    private const int CostOfReading = 10;

    public static readonly FunctionRow[] Rows =
    [
        new("INDEX", 2, 4, "AVVV", Index),
        new("ROW", 0, 1, "R", call => Position(call, byRow: true)),
        new("COLUMN", 0, 1, "R", call => Position(call, byRow: false)),
        new("ROWS", 1, 1, "A", call => Extent(call, area => area.Rows, array => array.Rows)),
        new("COLUMNS", 1, 1, "A", call => Extent(call, area => area.Columns, array => array.Columns)),
        new("AREAS", 1, 1, "R", call => call.Value(0).Reference is { } reference ? reference.Areas.Length : CellError.Value),
        new("OFFSET", 3, 5, "RVVVV", Offset),
        new("INDIRECT", 1, 2, "VV", Indirect),
        new("ADDRESS", 2, 5, "VVVVV", Address),
        new("TRANSPOSE", 1, 1, "A", Transpose),
    ];

    private static FormulaValue Index(Call call)
    {
        var source = call.Value(0);
        if (source.IsError)
            return source;
        var (row, column, which) = (
            Numbers.Truncate(call.Number(1)),
            Numbers.Truncate(call.Number(2, 0)),
            Numbers.Truncate(call.Number(3, 1))
        );
        if (call.Failed)
            return call.Failure;
        if (row < 0 || column < 0)
            return CellError.Value;
        if (which < 1 || which > (source.Reference?.Areas.Length ?? 1))
            return CellError.Reference;
        var area = source.Reference?.Areas[(int)which - 1];
        var array = area is null ? call.Array(0) : null;
        var (rows, columns) = (area?.Rows ?? array!.Rows, area?.Columns ?? array!.Columns);

        // With one index, a single row is counted along, and a rectangle is not to be counted at all.
        if (call.Count == 2 && rows == 1)
            (row, column) = (columns == 1 ? row : 0, columns == 1 ? 0 : row);
        else if (call.Count == 2 && rows > 1 && columns > 1)
            return CellError.Reference;
        if (row > rows || column > columns)
            return CellError.Reference;
        if (area is { } within)
        {
            return new Reference(
                within with
                {
                    Top = row == 0 ? within.Top : within.Top + (int)row - 1,
                    Bottom = row == 0 ? within.Bottom : within.Top + (int)row - 1,
                    Left = column == 0 ? within.Left : within.Left + (int)column - 1,
                    Right = column == 0 ? within.Right : within.Left + (int)column - 1,
                }
            );
        }

        return Part(call.Meter, array!, (int)row, (int)column);
    }

    private static FormulaValue Part(Meter meter, ArrayValue array, int row, int column)
    {
        if (row == 0 && array.Rows == 1)
            row = 1;
        if (column == 0 && array.Columns == 1)
            column = 1;
        if (row > 0 && column > 0)
            return array[row - 1, column - 1];
        if (row == 0 && column == 0)
            return array;
        var part = row > 0 ? new ArrayValue(meter, 1, array.Columns) : new ArrayValue(meter, array.Rows, 1);
        for (var i = 0; i < part.Count; i++)
        {
            if (row > 0)
                part[0, i] = array[row - 1, i];
            else
                part[i, 0] = array[i, column - 1];
        }

        return part;
    }

    /// <summary>
    /// The first row or column of a reference, all of them in an array formula; without an argument, of the formula's own cell.
    /// </summary>
    private static FormulaValue Position(Call call, bool byRow)
    {
        if (call.IsMissing(0))
            return call.Cells.Place is var (row, column)
                ? byRow
                    ? row
                    : column
                : CellError.Value;
        if (call.Area(0) is not { } area)
            return CellError.Value;
        var (first, count) = byRow ? (area.Top, area.Rows) : (area.Left, area.Columns);
        if (count == 1 || !call.WantsArrays)
            return first;
        if (call.Run.TooLarge(count))
            return CellError.Value;
        var positions = byRow ? new ArrayValue(call.Meter, count, 1) : new ArrayValue(call.Meter, 1, count);
        for (var i = 0; i < count; i++)
        {
            if (byRow)
                positions[i, 0] = CellValue.FromNumber(first + i);
            else
                positions[0, i] = CellValue.FromNumber(first + i);
        }

        return positions;
    }

    private static FormulaValue Extent(Call call, Func<Area, int> ofArea, Func<ArrayValue, int> ofArray)
    {
        var value = call.Value(0);
        if (value.IsError)
            return value;
        if (value.Reference is { } reference)
            return reference.Areas.Length == 1 ? ofArea(reference.First) : CellError.Reference;
        return value.Array is { } array ? ofArray(array) : 1;
    }

    private static FormulaValue Offset(Call call)
    {
        if (call.Area(0) is not { } area)
            return CellError.Value;
        var (rows, columns) = (Numbers.Truncate(call.Number(1)), Numbers.Truncate(call.Number(2)));
        var (height, width) = (Numbers.Truncate(call.Number(3, area.Rows)), Numbers.Truncate(call.Number(4, area.Columns)));
        if (call.Failed)
            return call.Failure;
        if (height == 0 || width == 0)
            return CellError.Reference;
        var (top, left) = (area.Top + rows, area.Left + columns);
        if (height < 0)
            (top, height) = (top + height + 1, -height);
        if (width < 0)
            (left, width) = (left + width + 1, -width);
        if (top < 1 || left < 1 || top + height - 1 > CellAddress.LastRow || left + width - 1 > CellAddress.LastColumn)
            return CellError.Reference;
        return new Reference(new Area(area.Sheet, (int)top, (int)left, (int)(top + height - 1), (int)(left + width - 1)));
    }

    /// <summary>The reference that a text spells, in the style of columns as letters.</summary>
    private static FormulaValue Indirect(Call call)
    {
        var text = call.Text(0);
        var letters = call.Logical(1, true);
        if (call.Failed)
            return call.Failure;
        if (!letters)
            return call.Run.Unsupported(new Obstacle.NumberedReference());
        call.Meter.Spend(CostOfReading + text.Length);
        var parse = CellFormula.Parse(text.Trim());
        if (parse.Formula?.Root is not (ReferenceNode or NameNode or TableNode or BinaryNode or UnsupportedNode))
            return CellError.Reference;
        var value = call.Evaluate(parse.Formula.Root);
        return value.Reference is null ? CellError.Reference : value;
    }

    private static FormulaValue Address(Call call)
    {
        var (row, column, kind) = (call.Integer(0), call.Integer(1), call.Integer(2, 1));
        if (kind is >= 5 and <= 8)
            kind -= 4; // not in the standard, and accepted by programs
        var letters = call.Logical(3, true);
        var sheet = call.Text(4, "");
        if (call.Failed)
            return call.Failure;
        if (row is < 1 or > CellAddress.LastRow || column is < 1 or > CellAddress.LastColumn || kind is < 1 or > 4)
            return CellError.Value;
        var (rowFixed, columnFixed) = (kind is 1 or 2, kind is 1 or 3);
        var cell = letters
            ? new Corner(row, rowFixed, column, columnFixed).ToString()
            : R1C1('R', row, rowFixed) + R1C1('C', column, columnFixed);
        if (call.IsMissing(4))
            return cell;

        // The brackets around another workbook's name need no quotes.
        var name = sheet.StartsWith('[') ? sheet[(sheet.IndexOf(']', StringComparison.Ordinal) + 1)..] : sheet;
        return (SheetNames.NeedsQuotes(name) && sheet.Length > 0 ? $"'{sheet.Replace("'", "''", StringComparison.Ordinal)}'" : sheet)
            + "!"
            + cell;
    }

    private static string R1C1(char letter, int number, bool isFixed) =>
        isFixed
            ? string.Create(CultureInfo.InvariantCulture, $"{letter}{number}")
            : string.Create(CultureInfo.InvariantCulture, $"{letter}[{number}]");

    private static FormulaValue Transpose(Call call)
    {
        var array = call.Array(0);
        if (call.Run.TooLarge(array.Count))
            return CellError.Value;
        var turned = new ArrayValue(call.Meter, array.Columns, array.Rows);
        for (var row = 0; row < array.Rows; row++)
        {
            for (var column = 0; column < array.Columns; column++)
                turned[column, row] = array[row, column];
        }

        return turned;
    }
}
