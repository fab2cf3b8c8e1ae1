using System.Globalization;
using Bogus;

namespace ClassKit.Benchmarks.LargeClasses;

/// <summary>A roster of invented students, as many as wanted: the first students of a longer one are those of a shorter one.</summary>
internal static class LargeRoster
{
    private const int Seed = 20_260;

    private static readonly string[] Locales = ["en", "fr", "de", "es", "pt_BR", "it", "nl", "pl", "tr", "sv"];

    /// <summary>Writes the roster.</summary>
    /// <param name="students">How many, 1 to 99,999.</param>
    /// <param name="file">Where to; what is there is replaced.</param>
    public static void Write(int students, string file)
    {
        // One source of data for a locale: making one costs more than a thousand names.
        var random = new Randomizer(Seed);
        var people = Locales.Select(locale => new Faker(locale) { Random = random }).ToList();
        using var roster = new StreamWriter(file);
        roster.WriteLine("id,name,email");
        for (var at = 1; at <= students; at++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"student-{at:00000}");
            roster.WriteLine($"{id},\"{people[at % people.Count].Name.FullName()}\",{id}@example.org");
        }
    }
}
