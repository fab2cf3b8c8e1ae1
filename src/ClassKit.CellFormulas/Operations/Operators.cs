using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Operations;

/// <summary>The operators on single values.</summary>
internal static class Operators
{
    /// <summary>Applies an operator; of two errors the left one wins, be it an error value or a text that is no number.</summary>
    public static CellValue Apply(BinaryOperator op, CellValue left, CellValue right, Meter meter, int textLimit, DateSystem dates)
    {
        meter.TakeFor(left);
        meter.TakeFor(right);
        if (left.IsError)
            return left;
        if (op >= BinaryOperator.Equal)
            return right.IsError ? right : CellValue.FromLogical(Holds(op, Compare(left, right)));
        if (op == BinaryOperator.Concatenate)
            return Concatenate(left, right, meter, textLimit);
        if (
            !Coercion.TryNumber(left, meter, out var a, out var error, dates)
            || !Coercion.TryNumber(right, meter, out var b, out error, dates)
        )
            return CellValue.FromError(error);
        return op switch
        {
            BinaryOperator.Divide when b == 0 => CellValue.FromError(CellError.DivideByZero),
            BinaryOperator.Power => Power(a, b),
            _ => CellValue.FromNumber(Number(op, a, b)),
        };
    }

    /// <summary>An arithmetic operator on two numbers; no finite number where it gives an error.</summary>
    public static double Number(BinaryOperator op, double a, double b) =>
        op switch
        {
            BinaryOperator.Add => Numbers.Add(a, b),
            BinaryOperator.Subtract => Numbers.Add(a, -b),
            BinaryOperator.Multiply => a * b,
            BinaryOperator.Divide => b == 0 ? double.NaN : a / b,
            _ => Power(a, b) is { IsNumber: true, Number: var power } ? power : double.NaN,
        };

    public static CellValue Negate(CellValue value, Meter meter) =>
        Coercion.TryNumber(value, meter, out var number, out var error) ? CellValue.FromNumber(Negate(number)) : CellValue.FromError(error);

    /// <summary>The sign of a minus before a number, which leaves 0 without one.</summary>
    public static double Negate(double number) => number == 0 ? 0 : -number;

    /// <summary>A hundredth.</summary>
    public static double Percent(double number) => number / 100;

    public static CellValue Percent(CellValue value, Meter meter) =>
        Coercion.TryNumber(value, meter, out var number, out var error)
            ? CellValue.FromNumber(Percent(number))
            : CellValue.FromError(error);

    /// <summary><c>0^0</c> has no value, nor has a negative number to a broken power.</summary>
    public static CellValue Power(double a, double b)
    {
        if (a == 0 && b == 0)
            return CellValue.FromError(CellError.Number);
        if (a == 0 && b < 0)
            return CellValue.FromError(CellError.DivideByZero);
        return CellValue.FromNumber(Math.Pow(a, b));
    }

    /// <summary>
    /// The order of values that are no errors: numbers, then texts, then logicals; letter case does not count, and a blank acts as the
    /// empty value of the other's kind.
    /// </summary>
    public static int Compare(CellValue left, CellValue right)
    {
        if (left.IsBlank)
            left = Empty(right.Kind);
        if (right.IsBlank)
            right = Empty(left.Kind);
        if (left.Kind != right.Kind)
            return left.Kind.CompareTo(right.Kind);
        return left.Kind switch
        {
            CellValueKind.Number => Numbers.Compare(left.Number, right.Number),
            CellValueKind.Text => TextOrder.Compare(left.Text, right.Text),
            CellValueKind.Logical => left.Logical.CompareTo(right.Logical),
            _ => 0,
        };
    }

    private static CellValue Empty(CellValueKind kind) =>
        kind switch
        {
            CellValueKind.Text => CellValue.FromText(""),
            CellValueKind.Logical => CellValue.FromLogical(false),
            _ => CellValue.FromNumber(0),
        };

    private static bool Holds(BinaryOperator op, int order) =>
        op switch
        {
            BinaryOperator.Equal => order == 0,
            BinaryOperator.NotEqual => order != 0,
            BinaryOperator.Less => order < 0,
            BinaryOperator.LessOrEqual => order <= 0,
            BinaryOperator.Greater => order > 0,
            _ => order >= 0,
        };

    private static CellValue Concatenate(CellValue left, CellValue right, Meter meter, int textLimit)
    {
        if (!Coercion.TryText(left, meter, out var a, out var error) || !Coercion.TryText(right, meter, out var b, out error))
            return CellValue.FromError(error);
        return a.Length + b.Length > textLimit ? CellValue.FromError(CellError.Value) : CellValue.FromText(a + b);
    }
}
