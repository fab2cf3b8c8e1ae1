using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>One section of a number format, read into its parts.</summary>
internal sealed class FormatSection
{
    private readonly List<FormatPart> _parts = [];
    private bool _grouped;
    private int _thousands;
    private FractionFormat? _fraction;

    /// <summary>When the section applies, if it says so itself: <c>[&gt;=100]</c>.</summary>
    public Func<double, bool>? Condition { get; private set; }

    public bool IsText => Has(FormatPartKind.Text);

    public bool IsDate => Has(FormatPartKind.Date) || Has(FormatPartKind.Elapsed) || Has(FormatPartKind.HalfDay);

    /// <summary>Reads a section; null for one that we do not evaluate.</summary>
    public static FormatSection? Parse(string code)
    {
        var section = new FormatSection();
        return new FormatReader(code).Read(section._parts, condition => section.Condition = condition) && section.Prepare()
            ? section
            : null;
    }

    public string? Show(double number, DateSystem dates)
    {
        if (IsDate)
            return DateFormat.Show(_parts, number, dates);
        if (Has(FormatPartKind.General))
            return string.Concat(_parts.Select(part => part.Kind == FormatPartKind.General ? GeneralFormat.Show(number) : part.Text));
        if (!Has(FormatPartKind.Digit))
            return string.Concat(_parts.Select(part => part.Text));
        if (!double.IsFinite(Scaled(number)))
            return null;
        if (_fraction is not null)
            return _fraction.Show(Scaled(number));
        return Has(FormatPartKind.Exponent)
            ? ScientificFormat.Show(_parts, number, _grouped)
            : DecimalFormat.Show(_parts, Scaled(number), _grouped);
    }

    public string Show(string text) => string.Concat(_parts.Select(part => part.Kind == FormatPartKind.Text ? text : part.Text));

    /// <summary>True if nothing but zeros is left of the number, so that no minus sign belongs before it.</summary>
    public bool IsZero(double number)
    {
        if (_fraction is not null)
            return _fraction.IsZero(Scaled(number));
        return Has(FormatPartKind.Digit)
            && !Has(FormatPartKind.Exponent)
            && Numbers.Round(Scaled(number), DecimalFormat.Places(_parts)) == 0;
    }

    private bool Has(FormatPartKind kind) => _parts.Exists(part => part.Kind == kind);

    /// <summary>
    /// Commas between digits before the point group thousands; commas right after the last digit before or after it divide by a thousand
    /// each.
    /// </summary>
    private bool Prepare()
    {
        if (IsDate)
            return true;
        var end = _parts.FindIndex(part => part.Kind is FormatPartKind.Point or FormatPartKind.Exponent);
        if (end < 0)
            end = _parts.Count;
        var first = _parts.FindIndex(part => part.Kind == FormatPartKind.Digit);
        var last = end > 0 ? _parts.FindLastIndex(end - 1, part => part.Kind == FormatPartKind.Digit) : -1;
        for (var at = _parts.Count - 1; at > first && first >= 0; at--)
        {
            if (_parts[at] is not { Kind: FormatPartKind.Literal, Text: "," })
                continue;
            if (at < last)
                _grouped = true;
            else
                _thousands++;
            _parts.RemoveAt(at);
        }

        if (!Has(FormatPartKind.Slash))
            return true;
        _fraction = new(_parts);
        return _fraction.IsValid;
    }

    private double Scaled(double number)
    {
        foreach (var part in _parts)
        {
            if (part.Kind == FormatPartKind.Percent)
                number *= 100;
        }

        for (var i = 0; i < _thousands; i++)
            number /= 1000;
        return number;
    }
}
