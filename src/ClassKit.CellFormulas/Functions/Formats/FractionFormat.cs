using System.Globalization;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>A number as a fraction: <c># ?/?</c> gives <c>2 3/4</c>.</summary>
internal sealed class FractionFormat
{
    private const int MostPlaces = 7;

    private readonly List<FormatPart> _whole = [];
    private readonly List<FormatPart> _between = [];
    private readonly List<FormatPart> _numerator = [];
    private readonly List<FormatPart> _slash = [];
    private readonly List<FormatPart> _denominator = [];
    private readonly List<FormatPart> _end = [];

    /// <summary>
    /// Sorts the parts: whole number, what stands between, numerator, the slash with what is around it, denominator, the rest.
    /// </summary>
    public FractionFormat(List<FormatPart> parts)
    {
        var slash = parts.FindIndex(part => part.Kind == FormatPartKind.Slash);
        var last = parts.FindLastIndex(slash, IsPlace);
        var first = last;
        while (first > 0 && IsPlace(parts[first - 1]))
            first--;
        var wholeEnd = first > 0 ? parts.FindLastIndex(first - 1, IsPlace) : -1;
        _whole.AddRange(parts.Take(wholeEnd + 1));
        _between.AddRange(parts.Skip(wholeEnd + 1).Take(first - wholeEnd - 1));
        _numerator.AddRange(parts.Skip(first).Take(last - first + 1));
        var denominator = parts.FindIndex(slash, part => IsPlace(part) || part.Kind == FormatPartKind.Denominator);
        if (denominator < 0)
            denominator = parts.Count;
        var end = denominator;
        while (end < parts.Count && (IsPlace(parts[end]) || parts[end].Kind == FormatPartKind.Denominator))
            end++;
        _slash.AddRange(parts.Skip(last + 1).Take(denominator - last - 1));
        _denominator.AddRange(parts.Skip(denominator).Take(end - denominator));
        _end.AddRange(parts.Skip(end));
    }

    /// <summary>False for a format without a denominator or with one too long to find.</summary>
    public bool IsValid => _denominator.Count is > 0 and <= MostPlaces && (Fixed is null || _denominator.Count == 1) && Fixed != 0;

    private double? Fixed =>
        _denominator is [{ Kind: FormatPartKind.Denominator } only] ? int.Parse(only.Text, CultureInfo.InvariantCulture) : null;

    // Somewhere a place asks for a space where it has no digit: then nothing shifts, and what is left out becomes spaces.
    private bool KeepsWidth => _whole.Concat(_numerator).Concat(_denominator).Any(IsSpace);

    public string Show(double number)
    {
        var (whole, numerator, denominator) = Parts(number);
        var always = _numerator.Exists(part => part.Text == "0");
        if (_whole.Count == 0 || numerator != 0 || always)
            return Head(whole, numerator) + Fraction(numerator, denominator) + Text(_end);
        var shown = DigitPlaces.Whole(_whole, Digits(whole), grouped: false);
        var left = KeepsWidth ? new string(' ', Text(_between).Length + Fraction(numerator, denominator).Length) : "";
        return shown + left + Text(_end);
    }

    /// <summary>True if nothing is left of the number.</summary>
    public bool IsZero(double number) => Parts(number) is (0, 0, _);

    private string Head(double whole, double numerator)
    {
        if (_whole.Count == 0)
            return Text(_between);
        var isWritten =
            whole != 0
            || _whole.Exists(part => part is { Kind: FormatPartKind.Digit, Text: "0" })
            || (numerator == 0 && _whole.Exists(IsSpace));
        if (isWritten)
            return DigitPlaces.Whole(_whole, Digits(whole), grouped: false) + Text(_between);
        return DigitPlaces.Whole(_whole, "", grouped: false)
            + (_whole.Concat(_numerator).Any(IsSpace) ? new string(' ', Text(_between).Length) : "");
    }

    private string Fraction(double numerator, double denominator)
    {
        var upper = DigitPlaces.Whole(_numerator, Digits(numerator), grouped: false);
        if (Fixed is not null)
            return upper + Text(_slash) + Text(_denominator);
        var digits = Digits(denominator);

        // Below the line digits stand to the left.
        var lower = _denominator.Exists(part => part.Text == "?")
            ? digits.PadRight(_denominator.Count)
            : DigitPlaces.Whole(_denominator, digits, grouped: false);
        return upper + Text(_slash) + lower;
    }

    private (double Whole, double Numerator, double Denominator) Parts(double number)
    {
        var whole = _whole.Count == 0 ? 0 : Math.Floor(number);
        var rest = number - whole;
        var (numerator, denominator) = Fixed is { } given
            ? (Numbers.Floor(rest * given + 0.5), given)
            : Nearest(rest, Math.Pow(10, _denominator.Count) - 1);
        return _whole.Count > 0 && numerator == denominator
            ? (whole + 1, 0, 1)
            : (whole, numerator, numerator == 0 && Fixed is null ? 1 : denominator);
    }

    /// <summary>
    /// The nearest fraction with a denominator no larger than that, by continued fractions and what lies between two of them.
    /// </summary>
    private static (double Numerator, double Denominator) Nearest(double number, double most)
    {
        var (p0, q0, p1, q1) = (0.0, 1.0, 1.0, 0.0);
        var rest = number;
        while (true)
        {
            var term = Math.Floor(rest);
            var (p2, q2) = (term * p1 + p0, term * q1 + q0);
            if (q2 > most)
            {
                var partial = Math.Floor((most - q0) / q1);
                var (p, q) = (partial * p1 + p0, partial * q1 + q0);
                return Math.Abs(number - p / q) < Math.Abs(number - p1 / q1) ? (p, q) : (p1, q1);
            }

            (p0, q0, p1, q1) = (p1, q1, p2, q2);
            if (Math.Abs(number - p1 / q1) < 1e-12 * Math.Max(1, number))
                return (p1, q1);
            rest = 1 / (rest - term);
        }
    }

    private static bool IsPlace(FormatPart part) => part.Kind == FormatPartKind.Digit;

    private static bool IsSpace(FormatPart part) => part is { Kind: FormatPartKind.Digit, Text: "?" };

    private static string Digits(double number) => NumberText.Fixed(number, 0);

    private static string Text(List<FormatPart> parts) => string.Concat(parts.Select(part => part.Text));
}
