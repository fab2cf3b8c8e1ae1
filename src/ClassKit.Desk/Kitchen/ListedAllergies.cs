using System.Text.RegularExpressions;
using ClassKit.Baking.Allergens;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Texts;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Desk.Kitchen;

/// <summary>
/// What a class list says in its columns of allergies, as words that a class's page takes: whose they are is said and kept nowhere.
/// </summary>
/// <param name="Titles">The columns.</param>
/// <param name="Words">Those known as allergens, each once, in the order of their letters.</param>
/// <param name="Others">Short texts in which no allergen was found, each once, in the order of their letters.</param>
/// <param name="Longer">How many longer texts there are in which none was found.</param>
public sealed partial record ListedAllergies(
    IReadOnlyList<string> Titles,
    IReadOnlyList<AllergenWord> Words,
    IReadOnlyList<string> Others,
    int Longer
)
{
    /// <summary>The line of a class's file that they go into.</summary>
    private const string Key = "allergies";

    /// <summary>Longer texts are about somebody, and stay in the list.</summary>
    private const int Short = 40;

    /// <summary>No allergen has a name of more words.</summary>
    private const int MostWords = 3;

    private static readonly string[] Nothing = ["none", "no", "nil", "na", "n/a", "nothing", "nka", "nkda", "-", "–", "—", "x"];

    /// <summary>What a list says; null if it has no such column.</summary>
    public static ListedAllergies? Of(Roster roster)
    {
        ArgumentNullException.ThrowIfNull(roster);
        if (roster.Origin?.Allergies is not { } columns)
            return null;
        var names = roster
            .Students.SelectMany(student => student.Name.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(name => name.Length > 1)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var pieces = columns
            .Cells.SelectMany(cell => Between().Split(cell))
            .Select(piece => piece.Trim(' ', '.', '(', ')'))
            .Where(piece => piece.Length > 0 && !Nothing.Contains(piece, StringComparer.OrdinalIgnoreCase))
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(piece => (Piece: piece, Found: Found(piece)))
            .ToList();
        var unknown = pieces.Where(piece => piece.Found.Count == 0).Select(piece => piece.Piece).ToList();
        var shown = unknown.Where(piece => piece.Length <= Short && !piece.Split(' ').Any(names.Contains)).ToList();
        return new(
            columns.Titles,
            [.. pieces.SelectMany(piece => piece.Found).DistinctBy(word => word.Word).OrderBy(word => word.Word, StringComparer.Ordinal)],
            [.. shown.Order(StringComparer.OrdinalIgnoreCase)],
            unknown.Count - shown.Count
        );
    }

    /// <summary>Those that the class's file does not name yet.</summary>
    public IReadOnlyList<AllergenWord> NewFor(ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(known);
        var there = known.Profile.Model?.Allergies ?? [];
        return [.. Words.Where(word => there.All(other => other.Word != word.Word))];
    }

    /// <summary>True if the class's file has a line that they can be written into.</summary>
    public static bool CanBeAdded(ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(known);
        return OwnText.Read(known.File) is { } file && !FrontLines.IsLong(file.Text, Key) && With(file.Text, []) is not null;
    }

    /// <summary>Writes words into the class's file, behind those that stand there.</summary>
    /// <returns>Why nothing was written; empty if they stand there.</returns>
    public static IReadOnlyList<Diagnostic> Add(ClassEntry known, IReadOnlyList<string> words)
    {
        ArgumentNullException.ThrowIfNull(known);
        if (words.Count == 0)
            return [];
        if (OwnText.Read(known.File) is not { } file || FrontLines.IsLong(file.Text, Key) || With(file.Text, words) is not { } text)
            return
            [
                new(
                    known.File,
                    null,
                    "What somebody must keep away from could not be added to the class",
                    "Type it into the class’s page, and take the list without ticking it."
                ),
            ];
        var content = file.With(text);
        var read = ClassProfileReader.Read(new Library(new ChangedTree(PathTree.Instance.Full(known.File), content)).At(known.File));
        return !read.Succeeded ? read.Problems
            : file.Write(file.Stamp, content) is { } refused ? [refused]
            : [];
    }

    /// <summary>The text with more of them; null where what stands there is no list in brackets.</summary>
    private static string? With(string text, IReadOnlyList<string> words)
    {
        var before = FrontLines.Value(text, Key) ?? "[]";
        return before.StartsWith('[') && before.EndsWith(']')
            ? FrontLines.With(
                text,
                Key,
                $"[{string.Join(", ", new[] { before[1..^1].Trim() }.Where(there => there.Length > 0).Concat(words))}]"
            )
            : null;
    }

    /// <summary>The allergens of a text: itself, else the longest runs of its words that are one.</summary>
    private static List<AllergenWord> Found(string piece)
    {
        if (AllergenWords.Find(piece) is { } whole)
            return [whole];
        List<AllergenWord> found = [];
        var words = piece.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var at = 0; at < words.Length; at++)
        {
            for (var count = Math.Min(MostWords, words.Length - at); count > 0; count--)
            {
                if (AllergenWords.Find(string.Join(' ', words[at..(at + count)]).Trim('.', ':', '!', '?')) is not { } word)
                    continue;
                found.Add(word);
                at += count - 1;
                break;
            }
        }
        return found;
    }

    [GeneratedRegex(@"[,;/&+\n()|]|\band\b", RegexOptions.IgnoreCase)]
    private static partial Regex Between();
}
