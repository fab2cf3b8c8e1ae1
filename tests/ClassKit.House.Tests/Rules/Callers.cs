using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>What the program can come by, starting where it starts.</summary>
internal static class Callers
{
    /// <summary>
    /// Types that no path from the command line names: code for tests alone. Of a type of constants nothing is left where it is used, so
    /// those are not asked about.
    /// </summary>
    public static IReadOnlyList<string> Without { get; } = Find();

    private static List<string> Find()
    {
        var types = CompiledHouse.Types.ToDictionary(type => type.Name, StringComparer.Ordinal);
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var waiting = new Queue<string>(types.Values.Where(type => type.Project == "classkit").Select(type => type.Name));
        while (waiting.TryDequeue(out var name))
        {
            if (!reached.Add(name))
                continue;
            foreach (var used in types[name].Uses)
                waiting.Enqueue(used);
        }
        return [.. types.Keys.Where(name => !reached.Contains(name) && !types[name].HoldsOnlyConstants).Order(StringComparer.Ordinal)];
    }
}
