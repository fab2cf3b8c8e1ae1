using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.Content.Classes;

/// <summary>
/// Reads the name of a time zone: <c>Europe/Paris</c>. A city alone, or an abbreviation, is no name: the one meant is offered.
/// </summary>
internal static class TimeZoneName
{
    private const string Form =
        "Write the IANA name, a region and a city in English: `time zone: Europe/Paris` or `time zone: America/New_York`.";

    public static ClassTimeZone? Read(Located text, ProblemList problems)
    {
        if (ClassTimeZone.Find(text.Text) is { } zone)
            return zone;
        problems.Add(
            text.Line,
            $"`time zone` is `{text.Text}`, which is no name of the IANA time zone database",
            Meant(text.Text) is { } meant ? $"Did you mean `{meant}`? {Form}" : Form
        );
        return null;
    }

    private static string? Meant(string typed)
    {
        var name = typed.Trim().Replace(' ', '_');
        return ClassTimeZone
            .Ids.Order(StringComparer.Ordinal)
            .FirstOrDefault(id => id.EndsWith("/" + name, StringComparison.OrdinalIgnoreCase))
            ?? NearestWord.To(name, ClassTimeZone.Ids.Order(StringComparer.Ordinal));
    }
}
