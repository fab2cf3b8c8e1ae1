using System.Globalization;
using NodaTime;

namespace ClassKit.Exercises.Deadlines;

/// <summary>When work was due.</summary>
/// <param name="At">The moment, with the offset that the class's clocks had then.</param>
/// <param name="Zone">Where those clocks are.</param>
public sealed record DueMoment(DateTimeOffset At, ClassTimeZone Zone)
{
    /// <summary>What had to be decided to find the moment.</summary>
    public DueReading Reading { get; init; }

    /// <summary>The moment as the class's clocks show it, with the zone: <c>2026-11-20 17:00 (Europe/Paris)</c>.</summary>
    public override string ToString() => $"{OnClocks(At.UtcDateTime)} ({Zone})";

    /// <summary>
    /// The moment in the words that people use, <c>Friday 20 November 2026, 17:00</c>, on the class's clocks; universal time says that it
    /// is.
    /// </summary>
    public string Words =>
        In(Zone, At.UtcDateTime).ToString("dddd d MMMM yyyy, HH:mm", CultureInfo.InvariantCulture)
        + (Zone == ClassTimeZone.Utc ? " (UTC)" : "");

    /// <summary>Its day as the class's clocks show it, <c>2026-11-20</c>.</summary>
    public string Day => In(Zone, At.UtcDateTime).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>Another moment as the same clocks show it.</summary>
    /// <param name="utc">In universal time.</param>
    public string OnClocks(DateTime utc) => In(Zone, utc).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>
    /// When these clocks showed something, in universal time: the first of two, and with the offset before a change where they never did. At
    /// the ends of the calendar, what they showed.
    /// </summary>
    /// <param name="shown">What they showed; its kind is left aside.</param>
    public DateTime FromClocks(DateTime shown)
    {
        if (shown.Year is 1 or 9999)
            return DateTime.SpecifyKind(shown, DateTimeKind.Utc);
        var local = LocalDateTime.FromDateTime(DateTime.SpecifyKind(shown, DateTimeKind.Unspecified));
        return local
            .InZone(
                Zone.Rules,
                NodaTime.TimeZones.Resolvers.CreateMappingResolver(
                    NodaTime.TimeZones.Resolvers.ReturnEarlier,
                    NodaTime.TimeZones.Resolvers.ReturnForwardShifted
                )
            )
            .ToDateTimeUtc();
    }

    /// <summary>
    /// How long after it a moment is, 0 or less for one that is in time. A moment of whole minutes lasts until its minute is over: clocks
    /// that show 17:00 are not past 17:00, and programs write seconds that nobody typed.
    /// </summary>
    /// <param name="utc">In universal time.</param>
    public TimeSpan After(DateTime utc)
    {
        var due = At.UtcDateTime;
        return (due.Ticks % TimeSpan.TicksPerMinute == 0 ? new(utc.Ticks - (utc.Ticks % TimeSpan.TicksPerMinute), DateTimeKind.Utc) : utc)
            - due;
    }

    /// <summary>
    /// A moment with the offset that a zone's clocks had then; at the ends of the calendar, where a workbook may claim to be from,
    /// universal time.
    /// </summary>
    internal static DateTimeOffset In(ClassTimeZone zone, DateTime utc) =>
        utc.Year is 1 or 9999
            ? new(utc.Ticks, TimeSpan.Zero)
            : Instant.FromDateTimeUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc)).InZone(zone.Rules).ToDateTimeOffset();
}
