using System.Globalization;
using NodaTime;

namespace ClassKit.Exercises.Deadlines;

/// <summary>
/// A day and a time as typed: on the class's own clocks, unless an offset from universal time is named (ISO 8601-1:2019, 5.4).
/// </summary>
public sealed record DueWish
{
    private static readonly string[] Forms = ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss"];

    /// <summary>No class is older or further away, and no offset leads out of the calendar from these.</summary>
    private const int FirstYear = 1900;

    private const int LastYear = 2999;

    private readonly LocalDateTime _local;
    private readonly TimeSpan? _offset;

    private DueWish(LocalDateTime local, TimeSpan? offset) => (_local, _offset) = (local, offset);

    /// <summary>That work may come at any time, whatever is on record.</summary>
    public static DueWish AnyTime { get; } = new(default, null) { IsAnyTime = true };

    /// <summary>True for <see cref="AnyTime"/>.</summary>
    public bool IsAnyTime { get; private init; }

    /// <summary>
    /// Reads <c>2026-11-20T17:00</c>, <c>2026-11-20T17:00+01:00</c>, <c>2026-11-20T16:00Z</c> or <c>none</c>; null for anything else.
    /// </summary>
    public static DueWish? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text == "none")
            return AnyTime;
        return Read(text) is { _local.Year: >= FirstYear and <= LastYear } wish ? wish : null;
    }

    private static DueWish? Read(string text)
    {
        if (DateTime.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var local))
            return new(LocalDateTime.FromDateTime(local), null);
        return DateTimeOffset.TryParseExact(
            text,
            [.. Forms.Select(form => form + "zzz"), .. Forms.Select(form => form + "'Z'")],
            CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal,
            out var moment
        )
            ? new(LocalDateTime.FromDateTime(moment.DateTime), moment.Offset)
            : null;
    }

    /// <summary>The moment that is meant; null for <see cref="AnyTime"/>.</summary>
    /// <param name="zone">Where the class's clocks are; null if nobody has said.</param>
    /// <remarks>
    /// A time that does not occur counts with the offset before the change, as RFC 5545 (3.3.5) has it. Of one that occurs twice the RFC
    /// takes the first; here it is the second, since a student cannot know which was meant.
    /// </remarks>
    public DueMoment? In(ClassTimeZone? zone)
    {
        if (IsAnyTime)
            return null;
        var clocks = zone ?? ClassTimeZone.Utc;
        if (_offset is { } offset)
            return new(DueMoment.In(clocks, _local.ToDateTimeUnspecified() - offset), clocks);
        var mapping = clocks.Rules.MapLocal(_local);
        var (instant, reading) = mapping.Count switch
        {
            0 => (_local.WithOffset(mapping.EarlyInterval.WallOffset).ToInstant(), DueReading.Skipped),
            1 => (mapping.Single().ToInstant(), zone is null ? DueReading.ZoneAssumed : DueReading.Plain),
            _ => (mapping.Last().ToInstant(), DueReading.Twice),
        };
        return new(instant.InZone(clocks.Rules).ToDateTimeOffset(), clocks) { Reading = reading };
    }
}
