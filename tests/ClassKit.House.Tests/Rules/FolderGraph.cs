using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Which folder names types of which other one, within projects.</summary>
internal static class FolderGraph
{
    public static IReadOnlyDictionary<string, IReadOnlySet<string>> Arrows { get; } = Draw();

    public static IReadOnlyList<IReadOnlyList<string>> Circles { get; } = Rules.Circles.In(Arrows);

    private static Dictionary<string, IReadOnlySet<string>> Draw()
    {
        var folders = CompiledHouse.Types.ToDictionary(type => type.Name, type => type.Folder, StringComparer.Ordinal);
        return CompiledHouse.Types.GroupBy(type => type.Folder).ToDictionary(
            group => group.Key,
            IReadOnlySet<string> (group) => group.SelectMany(type => type.Uses).Select(used => folders[used]).Where(folder => folder != group.Key).ToHashSet(StringComparer.Ordinal),
            StringComparer.Ordinal);
    }
}
