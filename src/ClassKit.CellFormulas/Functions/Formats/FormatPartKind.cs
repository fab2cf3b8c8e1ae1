namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>The pieces that number formats are made of.</summary>
internal enum FormatPartKind
{
    /// <summary>A text shown as it is.</summary>
    Literal,

    /// <summary><c>0</c>, <c>#</c> or <c>?</c>.</summary>
    Digit,

    /// <summary>The decimal point.</summary>
    Point,

    /// <summary><c>%</c>.</summary>
    Percent,

    /// <summary><c>E+</c>, <c>E-</c>, <c>e+</c> or <c>e-</c>.</summary>
    Exponent,

    /// <summary>The <c>/</c> between the digits of a fraction.</summary>
    Slash,

    /// <summary>The digits of a denominator that is always the same, such as <c>16</c>.</summary>
    Denominator,

    /// <summary>Letters of a date or time.</summary>
    Date,

    /// <summary><c>AM/PM</c> or <c>A/P</c>.</summary>
    HalfDay,

    /// <summary><c>[h]</c>, <c>[m]</c> or <c>[s]</c>: all hours, minutes or seconds, not only those of the day.</summary>
    Elapsed,

    /// <summary><c>@</c>: the text itself.</summary>
    Text,

    /// <summary><c>General</c>.</summary>
    General,
}
