using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>
/// A number format such as <c>#,##0.00;[Red]-0.0</c>: up to four sections, for positive numbers, negative ones, zero, and text.
/// </summary>
/// <remarks>ECMA-376 Part 1, 18.8.31 (numFmts). Colours are passed over.</remarks>
internal sealed class NumberFormat
{
    private readonly FormatSection[] _sections;

    private NumberFormat(FormatSection[] sections) => _sections = sections;

    /// <summary>Reads a format; null for one that we do not evaluate.</summary>
    public static NumberFormat? Parse(string code)
    {
        var sections = new List<FormatSection>();
        foreach (var part in Split(code))
        {
            if (FormatSection.Parse(part) is not { } section)
                return null;
            sections.Add(section);
        }

        return sections.Count > 4 ? null : new([.. sections]);
    }

    /// <summary>The number as shown; null if it cannot be, such as a negative date.</summary>
    public string? Show(double number, DateSystem dates)
    {
        var withCondition = Array.FindIndex(_sections, section => section.Condition is not null);
        if (withCondition >= 0)
            return ShowConditionally(number, dates);
        var numeric = _sections.Where((section, at) => at < 3 && !section.IsText).ToArray();
        if (numeric.Length == 0)
            return GeneralFormat.Show(number);
        if (number < 0 && numeric.Length > 1)
            return numeric[1].Show(-number, dates);
        if (number == 0 && numeric.Length > 2)
            return numeric[2].Show(number, dates);
        if (number >= 0 || (numeric[0].IsDate && dates != DateSystem.From1904))
            return numeric[0].Show(number, dates);
        var size = numeric[0].Show(-number, dates);
        return size is null ? null
            : numeric[0].IsZero(-number) ? size
            : "-" + size;
    }

    /// <summary>A text as shown: itself, unless there is a section for texts.</summary>
    public string Show(string text)
    {
        var section = Array.Find(_sections, section => section.IsText) ?? (_sections.Length == 4 ? _sections[3] : null);
        return section is null ? text : section.Show(text);
    }

    private string? ShowConditionally(double number, DateSystem dates)
    {
        foreach (var section in _sections)
        {
            if (section.Condition is { } condition && !condition(number))
                continue;
            if (section.IsText)
                continue;
            return number < 0 ? "-" + section.Show(-number, dates) : section.Show(number, dates);
        }

        // What a lone condition leaves out is shown without a format.
        return _sections.Length == 1 ? GeneralFormat.Show(number) : null;
    }

    private static List<string> Split(string code)
    {
        var parts = new List<string>();
        var start = 0;
        var quoted = false;
        for (var at = 0; at < code.Length; at++)
        {
            if (code[at] == '"')
                quoted = !quoted;
            else if (code[at] == '\\' && !quoted)
                at++;
            else if (code[at] == ';' && !quoted)
            {
                parts.Add(code[start..at]);
                start = at + 1;
            }
        }

        parts.Add(code[start..]);
        return parts;
    }
}
