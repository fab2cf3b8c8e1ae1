using NodaTime;
using NodaTime.TimeZones;

namespace ClassKit.Exercises.Deadlines;

/// <summary>The time zone that a class's clocks are set to, by its name in the IANA time zone database.</summary>
/// <remarks>The database comes with NodaTime, so that a machine without zone files or ICU knows the same zones.</remarks>
public sealed record ClassTimeZone
{
    /// <summary>Only asked for names that are not spelled as the database spells them.</summary>
    private static readonly Lazy<Dictionary<string, string>> Known = new(() =>
        TzdbDateTimeZoneSource.Default.GetIds().ToDictionary(id => id, StringComparer.OrdinalIgnoreCase)
    );

    private ClassTimeZone(string id) => Id = id;

    /// <summary>Coordinated Universal Time, which is taken where nobody has said.</summary>
    public static ClassTimeZone Utc { get; } = new("UTC");

    /// <summary>Every name that is known, aliases among them.</summary>
    public static IReadOnlyCollection<string> Ids => Known.Value.Values;

    /// <summary>Its name as the database spells it: <c>Europe/Paris</c>.</summary>
    public string Id { get; }

    internal DateTimeZone Rules => DateTimeZoneProviders.Tzdb[Id];

    /// <summary>The zone of a name, in any case; null if the database has no such name.</summary>
    public static ClassTimeZone? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (TzdbDateTimeZoneSource.Default.CanonicalIdMap.ContainsKey(name))
            return new(name);
        return Known.Value.TryGetValue(name, out var id) ? new(id) : null;
    }

    /// <summary>The zone's name.</summary>
    public override string ToString() => Id;
}
