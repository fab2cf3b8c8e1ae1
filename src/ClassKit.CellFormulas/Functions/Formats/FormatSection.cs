using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>One section of a number format, read into its parts.</summary>
internal sealed class FormatSection
{
    private readonly List<FormatPart> _parts = [];
    private bool _grouped;
    private int _thousands;

    /// <summary>When the section applies, if it says so itself: <c>[&gt;=100]</c>.</summary>
    public Func<double, bool>? Condition { get; private set; }

    public bool IsText => Has(FormatPartKind.Text);

    public bool IsDate => Has(FormatPartKind.Date) || Has(FormatPartKind.Elapsed) || Has(FormatPartKind.HalfDay);

    /// <summary>Reads a section; null for one that we do not evaluate.</summary>
    public static FormatSection? Parse(string code)
    {
        var section = new FormatSection();
        return new FormatReader(code).Read(section._parts, condition => section.Condition = condition) && section.Prepare() ? section : null;
    }

    public string? Show(double number, bool uses1904Dates)
    {
        if (IsDate) return DateFormat.Show(_parts, number, uses1904Dates);
        if (_parts.Exists(part => part.Kind == FormatPartKind.General))
            return string.Concat(_parts.Select(part => part.Kind == FormatPartKind.General ? NumberText.General(number) : part.Text));
        if (!Has(FormatPartKind.Digit)) return string.Concat(_parts.Select(part => part.Text));
        return Has(FormatPartKind.Exponent) ? ShowScientific(Scaled(number)) : ShowDigits(Scaled(number));
    }

    public string Show(string text) => string.Concat(_parts.Select(part => part.Kind == FormatPartKind.Text ? text : part.Text));

    /// <summary>True if nothing but zeros is left of the number, so that no minus sign belongs before it.</summary>
    public bool IsZero(double number) => Has(FormatPartKind.Digit) && !Has(FormatPartKind.Exponent) && Numbers.Round(Scaled(number), Places) == 0;

    private int Places => _parts.FindIndex(part => part.Kind == FormatPartKind.Point) is var point and >= 0
        ? _parts.Skip(point).Count(part => part.Kind == FormatPartKind.Digit) : 0;

    private bool Has(FormatPartKind kind) => _parts.Exists(part => part.Kind == kind);

    /// <summary>Commas between digits group thousands; commas right after the last digit divide by a thousand each.</summary>
    private bool Prepare()
    {
        if (IsDate) return true;
        var last = _parts.FindLastIndex(part => part.Kind == FormatPartKind.Digit);
        for (var at = _parts.Count - 1; at >= 0; at--)
        {
            if (_parts[at] is not { Kind: FormatPartKind.Literal, Text: "," }) continue;
            var before = at > 0 && _parts.Take(at).Any(part => part.Kind == FormatPartKind.Digit);
            if (!before) continue;
            if (at < last) _grouped = true;
            else _thousands++;
            _parts.RemoveAt(at);
        }

        return true;
    }

    private double Scaled(double number)
    {
        foreach (var part in _parts)
        {
            if (part.Kind == FormatPartKind.Percent) number *= 100;
        }

        for (var i = 0; i < _thousands; i++) number /= 1000;
        return number;
    }

    private string ShowDigits(double number)
    {
        var point = _parts.FindIndex(part => part.Kind == FormatPartKind.Point);
        var places = Places;
        var digits = Numbers.Round(number, places).ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var whole = places > 0 ? digits[..^(places + 1)] : digits;
        var fraction = places > 0 ? digits[^places..] : "";
        return ShowWhole(whole == "0" ? "" : whole, point < 0 ? _parts.Count : point) + (point < 0 ? "" : ShowFraction(fraction, point));
    }

    /// <summary>Fills the digit places from the right; what is left over comes before the first of them.</summary>
    private string ShowWhole(string digits, int end)
    {
        var result = new StringBuilder();
        var (left, shown) = (digits.Length, 0);
        var first = _parts.FindIndex(part => part.Kind == FormatPartKind.Digit);
        for (var at = end - 1; at >= 0; at--)
        {
            var part = _parts[at];
            if (part.Kind != FormatPartKind.Digit)
            {
                result.Insert(0, part.Text);
                continue;
            }

            if (left > 0) Put(digits[--left]);
            else if (part.Text == "0") Put('0');
            else if (part.Text == "?") result.Insert(0, ' ');
            while (at == first && left > 0) Put(digits[--left]);
        }

        return result.ToString();

        void Put(char digit)
        {
            if (_grouped && shown > 0 && shown % 3 == 0) result.Insert(0, ',');
            result.Insert(0, digit);
            shown++;
        }
    }

    private string ShowFraction(string digits, int point)
    {
        var result = new StringBuilder();
        var used = digits.TrimEnd('0').Length;
        var at = 0;
        foreach (var part in _parts.Skip(point))
        {
            if (part.Kind == FormatPartKind.Digit)
            {
                if (at < used || part.Text == "0") result.Append(digits[at]);
                else if (part.Text == "?") result.Append(' ');
                at++;
            }
            else
            {
                result.Append(part.Text);
            }
        }

        return result.ToString();
    }

    private string ShowScientific(double number)
    {
        var mark = _parts.FindIndex(part => part.Kind == FormatPartKind.Exponent);
        var point = _parts.FindIndex(part => part.Kind == FormatPartKind.Point);
        if (point > mark) point = -1;
        var wholePlaces = _parts.Take(point < 0 ? mark : point).Count(part => part.Kind == FormatPartKind.Digit);
        var places = point < 0 ? 0 : _parts.Take(mark).Skip(point).Count(part => part.Kind == FormatPartKind.Digit);
        var exponent = number == 0 ? 0 : (int)Math.Floor(Math.Log10(number));
        if (wholePlaces > 1) exponent = (int)Math.Floor(exponent / (double)wholePlaces) * wholePlaces;
        var mantissa = Numbers.Round(number / Math.Pow(10, exponent), places);
        if (mantissa >= Math.Pow(10, Math.Max(1, wholePlaces)))
        {
            exponent += Math.Max(1, wholePlaces);
            mantissa = Numbers.Round(number / Math.Pow(10, exponent), places);
        }

        var digits = mantissa.ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var exponentPlaces = _parts.Skip(mark).Count(part => part.Kind == FormatPartKind.Digit);
        var sign = exponent < 0 ? "-" : _parts[mark].Text == "E+" ? "+" : "";
        var before = string.Concat(_parts.Take(mark).TakeWhile(part => part.Kind == FormatPartKind.Literal).Select(part => part.Text));
        var after = string.Concat(_parts.Skip(mark + 1).Where(part => part.Kind == FormatPartKind.Literal).Select(part => part.Text));
        return $"{before}{digits}E{sign}{Math.Abs(exponent).ToString(CultureInfo.InvariantCulture).PadLeft(exponentPlaces, '0')}{after}";
    }
}
