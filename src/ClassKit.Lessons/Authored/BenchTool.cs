using System.Text.RegularExpressions;

namespace ClassKit.Lessons.Authored;

/// <summary>Something that a team needs at its bench for one bread.</summary>
/// <param name="Name">In the singular: <c>Muffin tin with standard cups</c>.</param>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="IsShared">True if one serves all breads of a team, as a scale does; otherwise each bread that is under way needs its
/// own.</param>
public sealed partial record BenchTool(string Name, int Count, bool IsShared)
{
    /// <summary>True if a bread bakes in it or on it, so that it is greased or dusted: <c>Small loaf tin</c>, <c>Baking tray</c>.</summary>
    public bool IsTin => TinWord().IsMatch(Name);

    [GeneratedRegex(
        @"^(?!.* to ).*\b(tin|baking tray|baking sheet|sheet pan|baking pan|loaf pan|cake pan|muffin pan)s?\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex TinWord();
}
