using ClassKit.Content.Sources;

namespace ClassKit.Content.FrontMatter;

/// <summary>One line of front matter: a key with one value or a list of them.</summary>
internal sealed record Field(string Key, int Line, bool IsList, IReadOnlyList<Located> Values);
