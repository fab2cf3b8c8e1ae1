using System.Globalization;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>
/// A number as a few digits and a power of ten. With several places before the point the power is a multiple of their number.
/// </summary>
internal static class ScientificFormat
{
    public static string Show(List<FormatPart> parts, double number, bool grouped)
    {
        var mark = parts.FindIndex(part => part.Kind == FormatPartKind.Exponent);
        var (before, after) = (parts.GetRange(0, mark), parts.GetRange(mark + 1, parts.Count - mark - 1));
        var point = before.FindIndex(part => part.Kind == FormatPartKind.Point);
        var step = Math.Max(1, DigitPlaces.Count(point < 0 ? before : before.Take(point)));
        var exponent = number == 0 ? 0 : (int)Math.Floor(OrderOf(number) / (double)step) * step;
        var mantissa = Mantissa(number, exponent, before);
        if (mantissa >= Math.Pow(10, step))
        {
            exponent += step;
            mantissa = Mantissa(number, exponent, before);
        }

        var letter = parts[mark].Text[..1];
        return DecimalFormat.Show(before, mantissa, grouped, zeroFills: number == 0)
            + letter
            + Exponent(after, exponent, parts[mark].Text[1] == '+');
    }

    private static double Mantissa(double number, int exponent, List<FormatPart> parts) =>
        Numbers.Round(
            exponent < -300 ? number * 1e300 / Math.Pow(10, exponent + 300) : number / Math.Pow(10, exponent),
            DecimalFormat.Places(parts)
        );

    private static int OrderOf(double number)
    {
        var text = number.ToString("E14", CultureInfo.InvariantCulture);
        return int.Parse(
            text.AsSpan(text.IndexOf('E', StringComparison.Ordinal) + 1),
            NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture
        );
    }

    /// <summary>The sign stands right before the digits, after what the format has in between.</summary>
    private static string Exponent(List<FormatPart> parts, int exponent, bool plus)
    {
        var first = parts.FindIndex(part => part.Kind == FormatPartKind.Digit);
        var texts = parts.GetRange(0, Math.Max(0, first));
        var sign =
            exponent < 0 ? "-"
            : plus ? "+"
            : "";
        var size = Math.Abs(exponent).ToString(CultureInfo.InvariantCulture);
        return string.Concat(texts.Select(part => part.Text))
            + sign
            + (first < 0 ? size : DigitPlaces.Whole(parts.GetRange(first, parts.Count - first), size, grouped: false));
    }
}
