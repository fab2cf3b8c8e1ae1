using ClassKit.Exercises.Deadlines;

namespace ClassKit.Desk.HandOut;

/// <summary>Where a class's clocks may be, asked where its page does not say it: most likely where the instructor's own are.</summary>
internal static class ClockChoice
{
    /// <summary>The names of zones with the words for them, the likeliest first.</summary>
    public static IReadOnlyList<(string Id, string Words)> All { get; } = Here is { } here && here != ClassTimeZone.Utc
        ? [(here.Id, $"{City(here.Id)}, as on this computer"), (ClassTimeZone.Utc.Id, "UTC")]
        : [(ClassTimeZone.Utc.Id, "UTC, as on this computer")];

    /// <summary>The zone of this machine by its name in the IANA database, which Windows has under names of its own; null where it has none.</summary>
    private static ClassTimeZone? Here => TimeZoneInfo.Local is var local && local.HasIanaId ? ClassTimeZone.Find(local.Id) : TimeZoneInfo.TryConvertWindowsIdToIanaId(local.Id, out var id) ? ClassTimeZone.Find(id) : null;

    /// <summary>The zone that was chosen; null if none of those that are offered was.</summary>
    public static string? Of(string chosen) => All.Select(zone => zone.Id).FirstOrDefault(id => id == chosen);

    private static string City(string id) => id.Split('/')[^1].Replace('_', ' ');
}
