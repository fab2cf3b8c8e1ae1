using System.Globalization;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.Exercises.Tests.Deadlines;

/// <summary>
/// Moments against the transitions of the IANA time zone database, as its source files state the rules, and against ISO 8601.
/// </summary>
public sealed class DueMomentTests
{
    private static DueMoment Due(string typed, string? zone = null) =>
        DueWish.Parse(typed)!.In(zone is null ? null : ClassTimeZone.Find(zone))!;

    private static string Utc(DueMoment due) => due.At.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm'Z'", CultureInfo.InvariantCulture);

    // tz source files: `europe`, rule EU (last Sundays of March and October, 01:00 UTC); `northamerica`, rule US (2nd Sunday of March, 1st
    // of November, 02:00 local); `australasia`, rules AN (1st Sundays of October and April) and LH (Lord Howe, half an hour); `asia`,
    // Kathmandu +05:45.
    [Theory]
    [InlineData("2026-11-20T17:00", "Europe/Paris", "2026-11-20T16:00Z")]
    [InlineData("2026-07-01T17:00", "Europe/Paris", "2026-07-01T15:00Z")]
    [InlineData("2026-11-20T17:00", "America/New_York", "2026-11-20T22:00Z")]
    [InlineData("2026-07-01T17:00", "America/New_York", "2026-07-01T21:00Z")]
    [InlineData("2026-07-01T17:00", "America/Phoenix", "2026-07-02T00:00Z")]
    [InlineData("2026-01-15T17:00", "Australia/Sydney", "2026-01-15T06:00Z")]
    [InlineData("2026-07-15T17:00", "Australia/Lord_Howe", "2026-07-15T06:30Z")]
    [InlineData("2026-01-15T17:00", "Asia/Kathmandu", "2026-01-15T11:15Z")]
    public void A_time_is_on_the_clocks_of_the_class(string typed, string zone, string utc)
    {
        var due = Due(typed, zone);

        Assert.Equal((utc, DueReading.Plain), (Utc(due), due.Reading));
        Assert.Equal($"{typed.Replace('T', ' ')} ({zone})", due.ToString());
    }

    // 20 November 2026 is a Friday, 1 July 2026 a Wednesday (Gregorian calendar; `date -d`); the other side of the date line has another
    // day.
    [Theory]
    [InlineData("2026-11-20T17:00", "Europe/Paris", "Friday 20 November 2026, 17:00")]
    [InlineData("2026-07-01T09:05", "America/New_York", "Wednesday 1 July 2026, 09:05")]
    [InlineData("2026-11-20T17:00-05:00", "Australia/Sydney", "Saturday 21 November 2026, 09:00")]
    [InlineData("2026-11-20T17:00", null, "Friday 20 November 2026, 17:00 (UTC)")]
    public void Students_read_it_in_words_on_their_own_clocks(string typed, string? zone, string words) =>
        Assert.Equal(words, Due(typed, zone).Words);

    // 2026-03-29 02:00 to 03:00 does not occur in Paris, 2026-03-08 02:00 to 03:00 not in New York. RFC 5545, 3.3.5: the offset before the
    // gap counts.
    [Theory]
    [InlineData("2026-03-29T02:30", "Europe/Paris", "2026-03-29T01:30Z", "2026-03-29 03:30")]
    [InlineData("2026-03-08T02:30", "America/New_York", "2026-03-08T07:30Z", "2026-03-08 03:30")]
    public void A_time_that_clocks_skip_is_moved_on(string typed, string zone, string utc, string shown)
    {
        var due = Due(typed, zone);

        Assert.Equal((utc, DueReading.Skipped), (Utc(due), due.Reading));
        Assert.StartsWith(shown, due.ToString(), StringComparison.Ordinal);
    }

    // 2026-10-25 02:30 comes twice in Paris (00:30 and 01:30 UTC), 2026-11-01 01:30 in New York (05:30 and 06:30 UTC): the later, for the
    // student.
    [Theory]
    [InlineData("2026-10-25T02:30", "Europe/Paris", "2026-10-25T01:30Z")]
    [InlineData("2026-11-01T01:30", "America/New_York", "2026-11-01T06:30Z")]
    public void Of_a_time_that_comes_twice_the_later_counts(string typed, string zone, string utc)
    {
        var due = Due(typed, zone);

        Assert.Equal((utc, DueReading.Twice), (Utc(due), due.Reading));
    }

    // ISO 8601-1:2019, 5.4.2.1: a local time with its difference from universal time, and Z for none.
    [Theory]
    [InlineData("2026-10-25T02:30+02:00", "2026-10-25T00:30Z")]
    [InlineData("2026-11-20T17:00-05:00", "2026-11-20T22:00Z")]
    [InlineData("2026-11-20T17:00Z", "2026-11-20T17:00Z")]
    public void A_time_with_an_offset_needs_no_zone(string typed, string utc)
    {
        var due = Due(typed, "Europe/Paris");

        Assert.Equal((utc, DueReading.Plain), (Utc(due), due.Reading));
        Assert.Equal("Europe/Paris", due.Zone.Id);
    }

    [Fact]
    public void Without_a_zone_universal_time_is_taken_and_that_is_a_fact_of_its_own()
    {
        var due = Due("2026-11-20T17:00");

        Assert.Equal(("2026-11-20T17:00Z", DueReading.ZoneAssumed, "UTC"), (Utc(due), due.Reading, due.Zone.Id));
    }

    [Theory]
    [InlineData("2026-11-20")]
    [InlineData("2026-02-30T12:00")]
    [InlineData("20.11.2026 17:00")]
    [InlineData("2026-11-20T25:00")]
    [InlineData("2026-11-20T17:00+99:00")]
    [InlineData("")]
    public void Anything_else_is_no_time(string typed) => Assert.Null(DueWish.Parse(typed));

    [Fact]
    public void The_bounds_of_the_calendar_break_nothing()
    {
        Assert.Null(DueWish.Parse("0001-01-01T00:00"));
        Assert.Null(DueWish.Parse("9999-12-31T23:59-12:00"));
        Assert.StartsWith(
            "9999-12-31 23:59",
            Due("2026-01-01T00:00", "Pacific/Kiritimati").OnClocks(DateTime.MaxValue),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "0001-01-01 00:00",
            Due("2026-01-01T00:00", "Pacific/Pago_Pago").OnClocks(DateTime.MinValue),
            StringComparison.Ordinal
        );
    }

    // 32 hours are a day and 8 hours. Arithmetic by hand.
    [Theory]
    [InlineData(0.5, "less than a minute")]
    [InlineData(1, "1 minute")]
    [InlineData(59, "59 minutes")]
    [InlineData(60, "1 hour")]
    [InlineData(61, "1 hour and 1 minute")]
    [InlineData(125, "2 hours and 5 minutes")]
    [InlineData(1440, "1 day")]
    [InlineData(1440 + 59, "1 day")]
    [InlineData(32 * 60, "1 day and 8 hours")]
    [InlineData(10 * 1440 + 60, "10 days and 1 hour")]
    public void How_late_is_said_in_the_units_people_use(double minutes, string words) =>
        Assert.Equal(words, Elapsed.Words(TimeSpan.FromMinutes(minutes)));

    /// <summary>Chicago keeps six hours behind universal time in winter (IANA time zone database).</summary>
    [Fact]
    public void Its_day_is_the_one_on_the_classes_clocks()
    {
        var moment = new DateTimeOffset(2026, 12, 1, 0, 23, 0, TimeSpan.Zero);

        Assert.Equal("2026-11-30", new DueMoment(moment, ClassTimeZone.Find("America/Chicago")!).Day);
        Assert.Equal("2026-12-01", new DueMoment(moment, ClassTimeZone.Utc).Day);
    }
}
