using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>What SUMIF and its kin ask of a cell: a value to equal, or a text such as <c>"&gt;=5"</c> or <c>"rye*"</c>.</summary>
/// <remarks>OpenFormula 1.3, 4.11.8 (criterion); ECMA-376 Part 1, 18.17.7 (COUNTIF).</remarks>
internal sealed class Criterion
{
    private readonly Test _test;
    private readonly CellValue _operand;
    private readonly bool _written;

    private Criterion(Test test, CellValue operand, bool written) => (_test, _operand, _written) = (test, operand, written);

    private enum Test
    {
        Equal,
        NotEqual,
        Less,
        LessOrEqual,
        Greater,
        GreaterOrEqual,
    }

    public static Criterion Of(CellValue value)
    {
        // A reference to an empty cell asks for 0.
        if (value.IsBlank)
            return new(Test.Equal, CellValue.FromNumber(0), false);
        if (!value.IsText)
            return new(Test.Equal, value, false);
        var text = value.Text;
        var (test, length) = text switch
        {
            ['<', '>', ..] => (Test.NotEqual, 2),
            ['<', '=', ..] => (Test.LessOrEqual, 2),
            ['>', '=', ..] => (Test.GreaterOrEqual, 2),
            ['<', ..] => (Test.Less, 1),
            ['>', ..] => (Test.Greater, 1),
            ['=', ..] => (Test.Equal, 1),
            _ => (Test.Equal, 0),
        };
        return new(test, Operand(text[length..]), length > 0);
    }

    /// <summary>As <see cref="Of"/>, but a text without a sign before it asks for all that begins with it.</summary>
    public static Criterion OfDatabase(CellValue value)
    {
        var criterion = Of(value);
        return criterion is { _written: false, _operand.IsText: true } && criterion._operand.Text.Length > 0
            ? new(Test.Equal, CellValue.FromText(criterion._operand.Text + "*"), false)
            : criterion;
    }

    /// <summary>Whether a cell meets it.</summary>
    public bool IsMetBy(CellValue cell, Meter meter) =>
        _test switch
        {
            Test.Equal => Equals(cell, meter),

            // A text of digits equals the number, and differs from it too: so programs have it.
            Test.NotEqual => !Equals(cell, meter) || (_operand.IsNumber && cell.IsText),
            _ => Ordered(cell),
        };

    private static CellValue Operand(string text)
    {
        if (text.Length == 0)
            return CellValue.FromText("");
        if (NumberText.TryParse(text, out var number))
            return CellValue.FromNumber(number);
        if (bool.TryParse(text, out var logical))
            return CellValue.FromLogical(logical);
        return CellErrorText.TryParse(text, out var error) ? CellValue.FromError(error) : CellValue.FromText(text);
    }

    private bool Equals(CellValue cell, Meter meter)
    {
        switch (_operand.Kind)
        {
            case CellValueKind.Number:
                if (cell.IsText)
                    return NumberText.TryParse(cell.Text, meter, out var number) && Numbers.Same(number, _operand.Number);
                return cell.IsNumber && Numbers.Same(cell.Number, _operand.Number);
            case CellValueKind.Text:
                // "" asks for what looks empty, "=" for what is.
                if (_operand.Text.Length == 0)
                    return cell.IsBlank || (!_written && cell.IsText && cell.Text.Length == 0);
                if (!cell.IsText)
                    return false;
                return Wildcard.IsPattern(_operand.Text)
                    ? Wildcard.Matches(_operand.Text, cell.Text, meter)
                    : string.Equals(_operand.Text, cell.Text, StringComparison.OrdinalIgnoreCase);
            default:
                return cell == _operand;
        }
    }

    private bool Ordered(CellValue cell)
    {
        if (cell.Kind != _operand.Kind || cell.IsError)
            return false;
        var order = Operators.Compare(cell, _operand);
        return _test switch
        {
            Test.Less => order < 0,
            Test.LessOrEqual => order <= 0,
            Test.Greater => order > 0,
            _ => order >= 0,
        };
    }
}
