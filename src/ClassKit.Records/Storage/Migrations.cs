using System.Reflection;

namespace ClassKit.Records.Storage;

/// <summary>The numbered steps from an empty file to the tables of this program.</summary>
internal static class Migrations
{
    private static readonly Lazy<string[]> Names = new(() =>
        [
            .. typeof(Migrations)
                .Assembly.GetManifestResourceNames()
                .Where(name => name.EndsWith(".sql", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ]
    );

    /// <summary>The version of the tables that this program writes.</summary>
    public static int Latest => Names.Value.Length;

    /// <summary>The steps from a version on, each with the version that it leads to.</summary>
    public static IEnumerable<(int Version, string Sql)> After(int version) =>
        Names.Value.Index().Skip(version).Select(step => (step.Index + 1, Read(step.Item)));

    private static string Read(string name)
    {
        using var text = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
        return text.ReadToEnd();
    }
}
