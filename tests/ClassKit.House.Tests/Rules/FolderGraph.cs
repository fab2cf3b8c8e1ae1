using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Which folder names types of which other one.</summary>
internal sealed class FolderGraph(IReadOnlyList<HouseType> types)
{
    private readonly Dictionary<string, string> _folders = types.ToDictionary(
        type => type.Name,
        type => type.Folder,
        StringComparer.Ordinal
    );

    /// <summary>Every circle with the types that close it, for whoever is to break it.</summary>
    public IReadOnlyList<string> Circles => [.. Rules.Circles.In(Arrows).Select(Shown)];

    private Dictionary<string, IReadOnlySet<string>> Arrows =>
        types
            .GroupBy(type => type.Folder)
            .ToDictionary(
                group => group.Key,
                IReadOnlySet<string> (group) =>
                    group
                        .SelectMany(type => type.Uses)
                        .Select(used => _folders[used])
                        .Where(folder => folder != group.Key)
                        .ToHashSet(StringComparer.Ordinal),
                StringComparer.Ordinal
            );

    private string Shown(IReadOnlyList<string> circle)
    {
        var arrows = types
            .Where(type => circle.Contains(type.Folder))
            .SelectMany(type =>
                type.Uses.Where(used => _folders[used] != type.Folder && circle.Contains(_folders[used]))
                    .Select(used => (Arrow: $"{type.Folder} → {_folders[used]}", Types: $"{type.Name} names {used}"))
            )
            .GroupBy(found => found.Arrow)
            .OrderBy(group => group.Count());
        return $"{string.Join(' ', circle)}:\n{string.Join('\n', arrows.Select(group => $"  {group.Key}: {string.Join(", ", group.Take(5).Select(found => found.Types))}"))}";
    }
}
