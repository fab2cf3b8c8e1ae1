using ClassKit.Exercises.Deadlines;
using NodaTime;
using NodaTime.TimeZones;

namespace ClassKit.Desk.HandOut;

/// <summary>Where a class's clocks may be, asked where its page does not say it: most likely where the instructor's own are.</summary>
internal static class ClockChoice
{
    /// <summary>The names of zones with the words for them, the likeliest first.</summary>
    public static IReadOnlyList<(string Id, string Words)> All { get; } =
        Here is { } here && here != ClassTimeZone.Utc
            ? [(here.Id, $"{City(here.Id)}, as on this computer"), (ClassTimeZone.Utc.Id, "universal time (UTC)")]
            : [(ClassTimeZone.Utc.Id, Here is null ? "universal time (UTC)" : "universal time (UTC), as on this computer")];

    /// <summary>
    /// The zone of this machine by its name in the IANA database; null where none can be found. Windows has names of its own, which the
    /// framework translates with ICU alone, and there is none here.
    /// </summary>
    private static ClassTimeZone? Here
    {
        get
        {
            try
            {
                return ClassTimeZone.Find(DateTimeZoneProviders.Tzdb.GetSystemDefault().Id);
            }
            catch (DateTimeZoneNotFoundException)
            {
                return null;
            }
        }
    }

    /// <summary>The zone that was chosen; null if none of those that are offered was.</summary>
    public static string? Of(string chosen) => All.Select(zone => zone.Id).FirstOrDefault(id => id == chosen);

    private static string City(string id) => id.Split('/')[^1].Replace('_', ' ');
}
