using System.Text.RegularExpressions;

namespace ClassKit.House.Tests.Rules;

/// <summary>The table of rooms in DEVELOPERS.md: what each project may know, and through that what those know.</summary>
internal static partial class RoomMap
{
    private static readonly Lazy<IReadOnlyDictionary<string, IReadOnlySet<string>>> Read = new(ReadTable);

    /// <summary>The rooms in the order of the table.</summary>
    public static IReadOnlyCollection<string> Rooms => [.. Read.Value.Keys];

    public static IReadOnlySet<string> AllowedFor(string room) => Read.Value[room];

    private static Dictionary<string, IReadOnlySet<string>> ReadTable()
    {
        Dictionary<string, IReadOnlySet<string>> rooms = [];
        foreach (
            var row in File.ReadLines(Repository.PathOf("DEVELOPERS.md")).Select(line => Row().Match(line)).Where(match => match.Success)
        )
        {
            var above = rooms.Keys.ToList();
            var knows = row.Groups["knows"].Value;
            var named = knows is "everything above" or "the domain"
                ? above
                : [.. above.Where(room => Regex.IsMatch(knows, $@"\b{room["ClassKit.".Length..]}\b"))];
            rooms[row.Groups["room"].Value] = named.Concat(named.SelectMany(room => rooms[room])).ToHashSet(StringComparer.Ordinal);
        }
        return rooms;
    }

    [GeneratedRegex(@"^\| `(?<room>ClassKit\.\w+)` \| [^|]+ \| (?<knows>[^|]+) \|$")]
    private static partial Regex Row();
}
