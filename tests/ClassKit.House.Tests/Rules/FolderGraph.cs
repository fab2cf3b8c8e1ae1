using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Which folder names types of which other one, within projects.</summary>
internal static class FolderGraph
{
    public static IReadOnlyDictionary<string, IReadOnlySet<string>> Arrows { get; } = Draw();

    public static IReadOnlyList<IReadOnlyList<string>> Circles { get; } = Rules.Circles.In(Arrows);

    /// <summary>A circle with the types that close it, for whoever is to break it.</summary>
    public static string Shown(IReadOnlyList<string> circle)
    {
        var folders = CompiledHouse.Types.ToDictionary(type => type.Name, type => type.Folder, StringComparer.Ordinal);
        var arrows = CompiledHouse.Types.Where(type => circle.Contains(type.Folder))
            .SelectMany(type => type.Uses.Where(used => folders[used] != type.Folder && circle.Contains(folders[used])).Select(used => (Arrow: $"{type.Folder} → {folders[used]}", Types: $"{type.Name} names {used}")))
            .GroupBy(found => found.Arrow)
            .OrderBy(group => group.Count());
        return $"{string.Join(' ', circle)}:\n{string.Join('\n', arrows.Select(group => $"  {group.Key}: {string.Join(", ", group.Take(5).Select(found => found.Types))}"))}";
    }

    private static Dictionary<string, IReadOnlySet<string>> Draw()
    {
        var folders = CompiledHouse.Types.ToDictionary(type => type.Name, type => type.Folder, StringComparer.Ordinal);
        return CompiledHouse.Types.GroupBy(type => type.Folder).ToDictionary(
            group => group.Key,
            IReadOnlySet<string> (group) => group.SelectMany(type => type.Uses).Select(used => folders[used]).Where(folder => folder != group.Key).ToHashSet(StringComparer.Ordinal),
            StringComparer.Ordinal);
    }
}
