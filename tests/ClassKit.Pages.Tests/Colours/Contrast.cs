using System.Globalization;

namespace ClassKit.Pages.Tests.Colours;

/// <summary>The contrast ratio of two colours (WCAG 2.2, definitions of contrast ratio and relative luminance).</summary>
internal static class Contrast
{
    public static double Ratio(string one, string other)
    {
        var (first, second) = (Luminance(one), Luminance(other));
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    /// <summary>
    /// Lightness L* from 0 to 100 of a colour on white of luminance 1 (ISO/CIE 11664-4:2019): what is left of it in grey print.
    /// </summary>
    public static double Lightness(string colour)
    {
        var luminance = Luminance(colour);
        return luminance > 216 / 24389.0 ? 116 * Math.Cbrt(luminance) - 16 : luminance * 24389 / 27;
    }

    private static double Luminance(string colour)
    {
        double Channel(int at)
        {
            var share = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);
    }
}
