using System.Text.RegularExpressions;

namespace ClassKit.Exercises.Authoring;

/// <summary>An authored text with places for values, each a name in braces: <c>Mix {flour} of flour.</c></summary>
/// <remarks>
/// It is taken apart once, when it is read, and is no text until <see cref="Fill"/> has made one of it. Two are equal if they read alike
/// and their places stand for the same.
/// </remarks>
public sealed partial class TextTemplate : IEquatable<TextTemplate>
{
    /// <summary>What stands around the places: one more than there are places.</summary>
    private readonly IReadOnlyList<string> _between;

    private TextTemplate(string written, IReadOnlyList<string> between, IReadOnlyList<Placeholder> placeholders) =>
        (Written, _between, Placeholders) = (written, between, placeholders);

    /// <summary>The text as its author wrote it.</summary>
    public string Written { get; }

    /// <summary>The places, in order.</summary>
    public IReadOnlyList<Placeholder> Placeholders { get; }

    /// <summary>True if there is nothing to read in it.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Written);

    /// <summary>The author's own words, each place blanked, so that nothing moves: to search for words, never to show.</summary>
    public string OwnWords => Fill(place => new(' ', place.Written.Length));

    /// <summary>Takes a text apart; a name stands for itself, and lines are those of the text.</summary>
    public static TextTemplate Parse(string text) => Parse(text, (name, line) => new($"{{{name}}}", name, line + 1));

    /// <summary>Takes a text apart.</summary>
    /// <param name="text">The text; a brace that closes on another line is none.</param>
    /// <param name="placed">The place for a name in braces and its line within the text, from 0; asked once for each, in order.</param>
    public static TextTemplate Parse(string text, Func<string, int, Placeholder> placed)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(placed);
        List<string> between = [];
        List<Placeholder> placeholders = [];
        var (from, line) = (0, 0);
        foreach (Match match in Braces().Matches(text))
        {
            between.Add(text[from..match.Index]);
            line += between[^1].Count(letter => letter == '\n');
            placeholders.Add(placed(match.Groups["name"].Value, line));
            from = match.Index + match.Length;
        }
        return new(text, [.. between, text[from..]], placeholders);
    }

    /// <summary>
    /// The text with its values. There is one whatever is known: a place of which nothing is known stays as it was written.
    /// </summary>
    /// <param name="value">What to put in; null where nothing is known.</param>
    public string Fill(Func<Placeholder, string?> value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return _between[0] + string.Concat(Placeholders.Zip(_between.Skip(1), (place, after) => (value(place) ?? place.Written) + after));
    }

    /// <summary>The same text, its places standing for other values.</summary>
    /// <param name="name">What a place stands for now, of what it stood for.</param>
    public TextTemplate Renamed(Func<string, string> name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return new(Written, _between, [.. Placeholders.Select(place => place with { Name = name(place.Name) })]);
    }

    /// <summary>A text without places, or one whose names stand for themselves.</summary>
    public static implicit operator TextTemplate(string text) => Parse(text);

    /// <inheritdoc/>
    public bool Equals(TextTemplate? other) =>
        other is not null
        && Written == other.Written
        && Placeholders.Select(place => place.Name).SequenceEqual(other.Placeholders.Select(place => place.Name));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TextTemplate);

    /// <inheritdoc/>
    public override int GetHashCode() => Written.GetHashCode(StringComparison.Ordinal);

    /// <summary>As its author wrote it.</summary>
    public override string ToString() => Written;

    [GeneratedRegex(@"\{(?<name>[^{}\n]*)\}")]
    private static partial Regex Braces();
}
