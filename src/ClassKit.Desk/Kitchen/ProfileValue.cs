using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.Desk.Kitchen;

/// <summary>
/// A value of a class profile between its file and the form: nobody types brackets, quotes, or the unit that is there already.
/// </summary>
internal static partial class ProfileValue
{
    /// <summary>Signs at which a plain value cannot begin (YAML 1.2.2, 7.3.3).</summary>
    private const string Reserved = "-?:,[]{}#&*!|>'\"%@`";

    /// <summary>The scale of degrees where nobody chose another one.</summary>
    private const string Celsius = "°C";

    /// <summary>The scale that goes with the measures of a class; null where it has both.</summary>
    /// <param name="units">As its file has it.</param>
    public static string? Degrees(string? units) =>
        units switch
        {
            "us" => "°F",
            "metric" => Celsius,
            _ => null,
        };

    /// <summary>As the form shows it.</summary>
    public static string Shown(ProfileField field, string? inFile)
    {
        var text = inFile ?? "";
        if (field.IsList && text.StartsWith('[') && text.EndsWith(']'))
            return text[1..^1].Trim();
        return text.Length > 1 && text[0] == '"' && text[^1] == '"'
            ? text[1..^1].Replace("\\\"", "\"", StringComparison.Ordinal).Replace("\\\\", "\\", StringComparison.Ordinal)
            : text;
    }

    /// <summary>As the file has it.</summary>
    /// <param name="field">Which.</param>
    /// <param name="typed">What was typed, or chosen.</param>
    /// <param name="before">What stands in the file; null if nothing.</param>
    /// <param name="degrees">Of which scale a bare number of degrees is, where the same form says so; null for that of what stands in the
    /// file.</param>
    public static string InFile(ProfileField field, string typed, string? before, string? degrees = null)
    {
        if (typed == Shown(field, before))
            return before ?? "";
        if (field.IsList)
            return typed.Length == 0
                ? before is null
                    ? ""
                    : "[]"
                : typed.StartsWith('[')
                    ? typed
                    : $"[{typed}]";
        if (typed.Length == 0)
            return "";
        if (
            field.Unit is { } usual
            && decimal.TryParse(
                typed.Replace(',', '.'),
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out _
            )
        )
            return $"{typed.Replace(',', '.')} {(usual == Celsius ? degrees : null) ?? UnitOf(before) ?? usual}";
        if (field.Unit == "min" && Hours().Match(typed) is { Success: true } hours)
            return string.Create(
                CultureInfo.InvariantCulture,
                $"{(60 * Whole(hours.Groups["hours"])) + Whole(hours.Groups["minutes"])} min"
            );
        if (
            field.Unit is not null
            && Written.FirstOrDefault(word => typed.EndsWith(word.Key, StringComparison.OrdinalIgnoreCase))
                is { Key: { } written, Value: var sign }
        )
            return $"{typed[..^written.Length].TrimEnd()} {sign}";
        if (field.Key == ProfileField.TimeZone)
            return Zone(typed);
        return NeedsQuotes(typed)
            ? $"\"{typed.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\""
            : typed;
    }

    /// <summary>Units as people write them out, longer words first.</summary>
    private static readonly KeyValuePair<string, string>[] Written =
    [
        new("minutes", "min"),
        new("minute", "min"),
        new("mins", "min"),
        new("grams", "g"),
        new("gram", "g"),
        new("metres", "m"),
        new("meters", "m"),
        new("feet", "ft"),
        new("foot", "ft"),
    ];

    private static int Whole(Group digits) => digits.Success ? int.Parse(digits.Value, NumberStyles.None, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(
        "^(?<hours>[0-9]{1,2}) ?h(ours?|rs?)?( ?(and )?(?<minutes>[0-9]{1,2}) ?(m(in(ute)?s?)?)?)?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Hours();

    /// <summary>Whoever works in °F types numbers in °F.</summary>
    private static string? UnitOf(string? before) =>
        before?.TrimStart('-', '+').TrimStart([.. "0123456789.,"]).Trim() is { Length: > 0 } unit ? unit : null;

    /// <summary>The name of a zone by its city, where that is the only one; else what was typed.</summary>
    private static string Zone(string typed) =>
        ClassTimeZone.Ids.Where(id => id.EndsWith("/" + typed.Trim().Replace(' ', '_'), StringComparison.OrdinalIgnoreCase)).ToList()
            is [var only]
            ? only
            : typed;

    private static bool NeedsQuotes(string text) =>
        Reserved.Contains(text[0], StringComparison.Ordinal)
        || text[^1] == ':'
        || text.Contains(": ", StringComparison.Ordinal)
        || text.Contains(" #", StringComparison.Ordinal);
}
