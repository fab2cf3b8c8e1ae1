using System.Text.Json.Serialization;
using ClassKit.Exercises.Deadlines;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Dealing;

/// <summary>When work is due, as it stands in dealt.json and grades.json.</summary>
/// <param name="At">The moment (ISO 8601), with the offset of the class's clocks.</param>
/// <param name="TimeZone">The IANA name of the zone of those clocks.</param>
internal sealed record DueEntry(DateTimeOffset At, string TimeZone)
{
    /// <summary>What had to be decided to find the moment; absent where nothing had.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Reading { get; init; }

    /// <summary>A moment as it stands in a file.</summary>
    public static DueEntry? Of(DueMoment? due) =>
        due is null ? null : new(due.At, due.Zone.Id) { Reading = due.Reading == DueReading.Plain ? null : KindWords.Of(due.Reading) };

    /// <summary>The moment that stands in a file.</summary>
    /// <exception cref="FormatException">Nothing can be due then, or the zone is not known.</exception>
    public static DueMoment? Model(DueEntry? entry)
    {
        if (entry is null)
            return null;
        if (entry.At.Year is < 1900 or > 2999)
            throw new FormatException("due: the year is not between 1900 and 2999");
        var zone = ClassTimeZone.Find(entry.TimeZone)
            ?? throw new FormatException(
                $"due: “{entry.TimeZone}” is no time zone that is known here; expected an IANA name such as Europe/Paris"
            );
        return new(entry.At, zone) { Reading = entry.Reading is { } reading ? KindWords.Find<DueReading>(reading) : DueReading.Plain };
    }
}
