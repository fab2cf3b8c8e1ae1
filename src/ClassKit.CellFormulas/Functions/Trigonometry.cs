using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Circular and hyperbolic functions; angles in radians (OpenFormula 1.3, 6.16).</summary>
internal static class Trigonometry
{
    // Beyond this an angle has no meaningful place on the circle.
    private const double LargestAngle = 134217728; // 2^27

    public static readonly FunctionRow[] Rows =
    [
        Angle("SIN", Math.Sin),
        Angle("COS", Math.Cos),
        Angle("TAN", Math.Tan),
        Angle("SEC", x => 1 / Math.Cos(x)),
        Reciprocal("CSC", Math.Sin),
        Reciprocal("COT", Math.Tan),
        Plain("ASIN", Math.Asin),
        Plain("ACOS", Math.Acos),
        Plain("ATAN", Math.Atan),
        Plain("ACOT", x => Math.PI / 2 - Math.Atan(x)),
        new("ATAN2", 2, 2, "VV", call => Atan2(call.Number(0), call.Number(1))),
        Plain("SINH", Math.Sinh),
        Plain("COSH", Math.Cosh),
        Plain("TANH", Math.Tanh),
        Plain("ASINH", Math.Asinh),
        Plain("ACOSH", Math.Acosh),
        Plain("ATANH", Math.Atanh),
        Plain("DEGREES", x => x / Math.PI * 180),
        Plain("RADIANS", x => x / 180 * Math.PI),
    ];

    private static FunctionRow Plain(string name, Func<double, double> of) => new(name, 1, 1, "V", call => of(call.Number(0)));

    private static FunctionRow Angle(string name, Func<double, double> of) =>
        new(name, 1, 1, "V", call => call.Number(0) is var x && Math.Abs(x) >= LargestAngle ? CellError.Number : of(x));

    private static FunctionRow Reciprocal(string name, Func<double, double> of) => new(name, 1, 1, "V", call => call.Number(0) is var x
            && Math.Abs(x) >= LargestAngle
                ? CellError.Number
            : x == 0 ? CellError.DivideByZero
            : 1 / of(x));

    /// <summary>The angle of a point given as x and then y.</summary>
    private static FormulaValue Atan2(double x, double y) => x == 0 && y == 0 ? CellError.DivideByZero : Math.Atan2(y, x);
}
