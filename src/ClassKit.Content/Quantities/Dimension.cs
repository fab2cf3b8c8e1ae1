using System.Text.RegularExpressions;
using ClassKit.Baking.Household;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Quantities;

/// <summary>A kind of quantity and the units that files may write it in.</summary>
/// <typeparam name="T">What the domain has for it.</typeparam>
/// <param name="Example">How one is written: <c>60 g</c>.</param>
/// <param name="Units">What each unit makes of a number; the first one is the one that advice names.</param>
internal sealed partial record Dimension<T>(string Example, IReadOnlyDictionary<string, Func<double, T>> Units)
    where T : struct
{
    /// <summary>The quantity, or null with the reason noted; the bounds are for the number as written.</summary>
    public T? Read(Located text, string what, Bounds bounds, ProblemList problems)
    {
        var match = NumberAndUnit().Match(text.Text);
        var (number, unit) = (match.Groups["number"].Value, match.Groups["unit"].Value);
        if (!match.Success || !TryNumber(number, out var value))
        {
            var advice =
                match.Success && number.Contains(',', StringComparison.Ordinal)
                    ? Number.NumberAdvice(number)
                    : $"Write a number and its unit, such as `{Example}`.";
            problems.Add(text.Line, $"{what} is `{text.Text}`", advice);
            return null;
        }
        if (!Units.TryGetValue(unit, out var make))
        {
            problems.Add(
                text.Line,
                unit.Length == 0 ? $"{what} is `{text.Text}`, without a unit" : $"{what} has the unit `{unit}`",
                unit.Length == 0 ? WithUnits(number, value) : UnitAdvice(unit)
            );
            return null;
        }
        return Number.Within((double)value, text, what, bounds, problems) is { } within ? make(within) : null;
    }

    /// <summary>A number, or a fraction as scales of ounces have it: <c>1/8</c>, <c>1 1/2</c>.</summary>
    private static bool TryNumber(string text, out decimal value)
    {
        if (!text.Contains('/', StringComparison.Ordinal))
            return Number.TryParse(text, out value);
        value = KitchenFraction.TryParse(text, out var fraction) ? (decimal)fraction : 0;
        return value > 0;
    }

    /// <summary>The number with each unit that it may have; of two ways to write one, the longer.</summary>
    private string WithUnits(string number, decimal value)
    {
        // A share of one is how programs write percent, and never how anybody says it.
        if (value is > 0 and < 1 && Units.ContainsKey("%"))
            return FormattableString.Invariant($"Write it in percent: `{Unit.Percent.Shown(value):0.##} %`.");
        var written = Units
            .Keys.Where(unit =>
                !Units.Keys.Any(other =>
                    other.Length > unit.Length && other.StartsWith('°') && other.EndsWith(unit, StringComparison.Ordinal)
                )
            )
            .Select(unit => $"`{number} {unit}`")
            .ToList();
        return $"Write its unit behind it: {(written.Count > 1 ? $"{string.Join(", ", written.SkipLast(1))} or " : "")}{written[^1]}.";
    }

    private string UnitAdvice(string unit) =>
        NearestWord.To(unit, Units.Keys) is { } nearest && unit.Length > 1
            ? $"Did you mean `{nearest}`?"
            : $"Write it as in `{Example}`; units known here: {string.Join(", ", Units.Keys)}.";

    [GeneratedRegex(@"^(?<number>([0-9]+\s+)?[0-9]+/[0-9]+|[-+]?[0-9.,]+)\s*(?<unit>[^0-9.,\s].*)?$")]
    private static partial Regex NumberAndUnit();
}
