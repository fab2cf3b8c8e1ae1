using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Functions.Formats;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Numbers from texts and texts from numbers (OpenFormula 1.3, 6.19 and 6.20).</summary>
internal static class NumberTexts
{
    /// <summary>Reading a format and showing a number by it is as much work as so many operators.</summary>
    private const int CostOfFormat = 50;

    public static readonly FunctionRow[] Rows =
    [
        new("VALUE", 1, 1, "V", Value),
        new("NUMBERVALUE", 1, 3, "VVV", NumberValue),
        new("TEXT", 2, 2, "VV", Text),
        new("FIXED", 1, 3, "VVV", Fixed),
        new("DOLLAR", 1, 2, "VV", Dollar),
    ];

    private static FormulaValue Value(Call call)
    {
        var value = call.Scalar(0);
        return value.Kind == CellValueKind.Logical ? CellError.Value : call.Number(0);
    }

    /// <summary>Reads a number with stated separators, whatever the language.</summary>
    private static FormulaValue NumberValue(Call call)
    {
        var (text, point, group) = (call.Text(0), call.Text(1, "."), call.Text(2, ","));
        if (call.Failed)
            return call.Failure;
        if (point.Length == 0 || (group.Length == 0 && !call.IsMissing(2)))
            return CellError.Value;
        var (pointSign, groupSign) = (point[0], group[0]);
        if (pointSign == groupSign)
            return CellError.Value;
        if (string.IsNullOrWhiteSpace(text))
            return 0;
        if (Plain(text, pointSign, groupSign, out var percents) is not { } plain)
            return CellError.Value;
        if (
            !double.TryParse(
                plain,
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
                CultureInfo.InvariantCulture,
                out var number
            )
        )
            return CellError.Value;
        for (; percents > 0; percents--)
            number /= 100;
        return number;
    }

    /// <summary>
    /// The text as programs write numbers: without blanks, groups and percent signs at its end. Null where groups follow the point.
    /// </summary>
    /// <remarks>In one pass: the text may be long, and a step pays for several of its characters.</remarks>
    private static string? Plain(string text, char point, char group, out int percents)
    {
        percents = 0;
        var end = text.Length;
        for (; end > 0 && (text[end - 1] == '%' || char.IsWhiteSpace(text[end - 1])); end--)
        {
            if (text[end - 1] == '%')
                percents++;
        }

        var pointSeen = false;
        var plain = new StringBuilder(end);
        foreach (var c in text.AsSpan(0, end))
        {
            if (char.IsWhiteSpace(c))
                continue;
            if (c == group && pointSeen)
                return null;
            if (c == group)
                continue;
            pointSeen |= c == point;
            plain.Append(
                c == point ? '.'
                : c is '.' or ',' ? 'x'
                : c
            );
        }

        return plain.ToString();
    }

    private static FormulaValue Text(Call call)
    {
        var (value, code) = (call.Scalar(0), call.Text(1));
        call.Meter.Spend(CostOfFormat + code.Length);
        if (call.Run.Halted)
            return false;
        if (call.Failed)
            return call.Failure;
        if (NumberFormat.Parse(code) is not { } format)
            return call.Run.Unsupported(new Obstacle.NumberFormat(code));
        if (value.Kind == CellValueKind.Logical)
            return format.Show(value.ToString());
        if (value.IsText && !NumberText.TryParse(value.Text, out _))
            return format.Show(value.Text);
        Coercion.TryNumber(value, call.Meter, out var number, out _);
        return format.Show(number, call.Run.Dates) is { } text ? text : CellError.Value;
    }

    private static FormulaValue Fixed(Call call)
    {
        var (number, places, plain) = (call.Number(0), call.Integer(1, 2), call.Logical(2, false));
        if (call.Failed)
            return call.Failure;
        if (places > 127)
            return CellError.Value;
        var rounded = Numbers.Round(number, places);
        return (rounded < 0 ? "-" : "") + Digits(rounded, places, plain);
    }

    private static FormulaValue Dollar(Call call)
    {
        var (number, places) = (call.Number(0), call.Integer(1, 2));
        if (call.Failed)
            return call.Failure;
        if (places > 127)
            return CellError.Value;
        var rounded = Numbers.Round(number, places);
        var text = "$" + Digits(rounded, places, plain: false);
        return rounded < 0 ? $"({text})" : text;
    }

    private static string Digits(double rounded, int places, bool plain)
    {
        var digits = NumberText.Fixed(Math.Abs(rounded), Math.Max(0, places));
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        for (var at = (point < 0 ? digits.Length : point) - 3; at > 0 && !plain; at -= 3)
            digits = digits.Insert(at, ",");
        return digits;
    }
}
