using System.Text.RegularExpressions;

namespace ClassKit.Pages.Prose;

/// <summary>Keeps a number and its unit on one line, where an author typed an ordinary space between them.</summary>
internal static partial class Ties
{
    /// <summary>The text with spaces before units that do not break.</summary>
    public static string Tie(string text) => BeforeUnit().Replace(text, "\u00A0");

    [GeneratedRegex(@"(?<=[0-9]) (?=(?:°C|°F|%|g|kg|mL|L|min|h|mm|cm|m|kJ|oz|lb|tsp|tbsp)(?![\p{L}\p{N}]))")]
    private static partial Regex BeforeUnit();
}
