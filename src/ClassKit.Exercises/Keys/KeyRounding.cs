using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Exercises.Keys;

/// <summary>How a key rounds its result.</summary>
/// <param name="Step">What its result is a multiple of, above 0, in the cell's own scale: 0.01 is a whole percent.</param>
/// <param name="Way">Where what lies between two steps goes.</param>
public sealed record KeyRounding(double Step, KeyRounding.Direction Way)
{
    /// <summary>Far more places than any answer has.</summary>
    private const int MostPlaces = 15;

    /// <summary>Steps that doubles stand for miss a whole number of others by less.</summary>
    private const double Slack = 1e-9;

    /// <summary>Where what lies between two steps goes.</summary>
    public enum Direction
    {
        /// <summary>To the step that is nearer.</summary>
        Nearest,

        /// <summary>To the step above.</summary>
        Up,

        /// <summary>To the step below.</summary>
        Down,
    }

    /// <summary>
    /// How a key rounds; null for one whose outermost function does not, or rounds to a step that is itself worked out.
    /// </summary>
    public static KeyRounding? Of(CellFormula key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (key.Shape is not CallNode { Arguments.Count: > 0 } call)
            return null;
        List<FormulaNode> rest = [.. call.Arguments.Skip(1)];
        return call.Name switch
        {
            "ROUND" => ToPlaces(rest, null, Direction.Nearest),
            "ROUNDUP" => ToPlaces(rest, null, Direction.Up),
            "ROUNDDOWN" => ToPlaces(rest, null, Direction.Down),
            "TRUNC" => ToPlaces(rest, 0, Direction.Down),
            "INT" => new(1, Direction.Down),
            "MROUND" => ToMultiples(rest, null, Direction.Nearest),
            "CEILING" => ToMultiples(rest, 1, Direction.Up),
            "FLOOR" => ToMultiples(rest, 1, Direction.Down),
            _ => null,
        };
    }

    /// <summary>True if what is rounded so is a multiple of a step as well.</summary>
    public bool IsMultipleOf(double step) =>
        step > 0 && Math.Abs((Step / step) - Math.Round(Step / step, MidpointRounding.AwayFromZero)) < Slack && Step > step * Slack;

    private static KeyRounding? ToPlaces(List<FormulaNode> rest, double? leftOut, Direction way) =>
        Number(rest, leftOut) is { } places && Math.Abs(places) <= MostPlaces ? new(Math.Pow(10, -Math.Truncate(places)), way) : null;

    private static KeyRounding? ToMultiples(List<FormulaNode> rest, double? leftOut, Direction way) =>
        Number(rest, leftOut) is > 0 and var step ? new(step, way) : null;

    private static double? Number(List<FormulaNode> rest, double? leftOut) =>
        rest switch
        {
            [] => leftOut,
            [NumberNode number, ..] => number.Value,
            [PrefixNode { Operator: PrefixOperator.Minus, Operand: NumberNode number }, ..] => -number.Value,
            _ => null,
        };
}
