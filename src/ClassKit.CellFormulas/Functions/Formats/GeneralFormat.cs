using System.Globalization;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>
/// A number under the format General: as many digits as eleven characters hold, which is fewer than joining it to a text gives.
/// </summary>
/// <remarks>
/// ECMA-376 Part 1, 18.8.30 (numFmt) leaves the width to programs; eleven is what the programs show that wrote the format.
/// </remarks>
internal static class GeneralFormat
{
    private const int Width = 11;

    public static string Show(double number)
    {
        if (number == 0)
            return "0";
        var sign = number < 0 ? "-" : "";
        var size = Math.Abs(number);
        return sign + (Plain(size) ?? Scientific(size));
    }

    /// <summary>Without exponent, or null if that does not fit or would lose too much.</summary>
    private static string? Plain(double size)
    {
        if (size >= 1e11)
            return null;
        var exact = NumberText.General(size);
        if (exact.Length <= Width && !exact.Contains('E', StringComparison.Ordinal))
            return exact;
        if (size < 1e-4)
            return null;
        var whole = size < 1 ? 1 : (int)Math.Floor(Math.Log10(size)) + 1;
        return NumberText.General(Numbers.Round(size, Math.Max(0, Width - 1 - whole)));
    }

    private static string Scientific(double size)
    {
        const int Places = 5;
        var text = size.ToString("E" + Places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var mark = text.IndexOf('E', StringComparison.Ordinal);
        var exponent = int.Parse(text.AsSpan(mark + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{text[..mark].TrimEnd('0').TrimEnd('.')}E{(exponent < 0 ? '-' : '+')}{Math.Abs(exponent):00}"
        );
    }
}
