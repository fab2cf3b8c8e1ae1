using System.Reflection;

namespace ClassKit.Content.Sources;

/// <summary>
/// What ships inside this program, so that it needs no folder beside it: the lessons, the practice bank, the rubrics and the invented class
/// with what it returned.
/// </summary>
public static class Shipped
{
    /// <summary>How the paths of what ships begin: <c>shipped:/lessons/practice</c>.</summary>
    public const string Scheme = "shipped:";

    private static readonly Assembly Here = typeof(Shipped).Assembly;

    /// <summary>Its files, by their paths in the checkout that it was built from.</summary>
    public static ISourceTree Tree { get; } =
        new ListedTree(
            Here.GetManifestResourceNames()
                .Select(name => KeyValuePair.Create<string, Func<Stream>>(name, () => Here.GetManifestResourceStream(name)!))
        );
}
