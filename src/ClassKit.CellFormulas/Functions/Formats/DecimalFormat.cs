using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>A number as digits around a decimal point.</summary>
internal static class DecimalFormat
{
    /// <summary>How many places there are after the point.</summary>
    public static int Places(List<FormatPart> parts) => Point(parts) is var point and >= 0 ? DigitPlaces.Count(parts.Skip(point)) : 0;

    /// <summary>The number, not negative, rounded to the places there are.</summary>
    /// <param name="parts">The parts of the section, grouping commas taken out.</param>
    /// <param name="number">The number.</param>
    /// <param name="grouped">Whether thousands are set apart.</param>
    /// <param name="zeroFills">Whether zero is as long as there are places for it, as before an exponent.</param>
    public static string Show(List<FormatPart> parts, double number, bool grouped, bool zeroFills = false)
    {
        var (point, places) = (Point(parts), Places(parts));
        var digits = NumberText.Fixed(Numbers.Round(number, places), places);
        var whole = places > 0 ? digits[..^(places + 1)] : digits;
        var before = point < 0 ? parts : parts.GetRange(0, point);
        if (whole == "0")
            whole = zeroFills ? new string('0', Math.Max(1, DigitPlaces.Count(before))) : "";
        return DigitPlaces.Whole(before, whole, grouped)
            + (point < 0 ? "" : DigitPlaces.AfterPoint(parts.Skip(point), places > 0 ? digits[^places..] : ""));
    }

    private static int Point(List<FormatPart> parts) => parts.FindIndex(part => part.Kind == FormatPartKind.Point);
}
