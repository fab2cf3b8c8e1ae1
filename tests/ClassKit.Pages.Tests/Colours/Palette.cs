using System.Text.RegularExpressions;
using ClassKit.Pages.Layout;

namespace ClassKit.Pages.Tests.Colours;

/// <summary>The stylesheet's colours by name, for one way of showing a page.</summary>
internal sealed partial class Palette
{
    private readonly Dictionary<string, string> _colours;

    private Palette(string name, Dictionary<string, string> colours) => (Name, _colours) = (name, colours);

    public string Name { get; }

    public static Palette Light { get; } = new("light", Block(":root {"));

    public static Palette Dark { get; } = Over("dark", Light, Block("@media screen and (prefers-color-scheme: dark) {"));

    public static Palette Print { get; } = Over("print", Light, Block("@media print {"));

    public static IReadOnlyList<Palette> All => [Light, Dark, Print];

    public IEnumerable<string> Kind(string prefix) =>
        _colours.Keys.Where(name => name.StartsWith("--" + prefix + "-", StringComparison.Ordinal));

    public string this[string name] => _colours[name];

    private static Palette Over(string name, Palette under, Dictionary<string, string> over)
    {
        var colours = new Dictionary<string, string>(under._colours);
        foreach (var (key, colour) in over)
            colours[key] = colour;
        return new(name, colours);
    }

    private static Dictionary<string, string> Block(string opening)
    {
        var from = Stylesheet.Text.IndexOf(opening, StringComparison.Ordinal);
        Assert.True(from >= 0, $"The stylesheet has no block '{opening}'.");
        var to = Stylesheet.Text.IndexOf('}', from);
        return Definition().Matches(Stylesheet.Text[from..to]).ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value);
    }

    [GeneratedRegex(@"(--[a-z-]+):\s*(#[0-9a-f]{6});")]
    private static partial Regex Definition();
}
