namespace ClassKit.Exercises.Cohorts;

/// <summary>A student who is looked for in what others wrote, and told apart from the others of the same classes.</summary>
/// <param name="Who">The student.</param>
/// <param name="Others">Everybody else who is known; whoever has the student's id is the student.</param>
public sealed record SoughtStudent(Student Who, IReadOnlyList<Student> Others)
{
    private readonly string[] _words = Words(Who);
    private readonly string[][] _folded = Folded(Who.Name);
    private readonly string[][] _othersFolded =
    [
        .. Others.Where(other => !other.Id.Equals(Who.Id, StringComparison.OrdinalIgnoreCase)).SelectMany(other => Folded(other.Name)),
    ];
    private readonly HashSet<string> _others =
    [
        .. Others
            .Where(other => !other.Id.Equals(Who.Id, StringComparison.OrdinalIgnoreCase))
            .SelectMany(Words)
            .Select(word => word.ToLowerInvariant()),
    ];

    private readonly Student[] _namesakes =
    [
        .. Others.Where(other =>
            !other.Id.Equals(Who.Id, StringComparison.OrdinalIgnoreCase)
            && Words(other).Intersect(Words(Who), StringComparer.OrdinalIgnoreCase).Any()
        ),
    ];

    /// <summary>True of a cell that says nothing else than who the student is: id, name or address.</summary>
    public bool Is(string cell) =>
        Array.Exists(_words, word => word.Equals(cell?.Trim(), StringComparison.OrdinalIgnoreCase)) && !IsAnother(cell!);

    /// <summary>True of a cell that says who another one is.</summary>
    public bool IsAnother(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return _others.Contains(cell.Trim().ToLowerInvariant());
    }

    /// <summary>
    /// True of a text in which the student's id, name or address stands as a whole word, the name also surname first, without its accents
    /// or with umlauts written out, as file names and lists of other programs have it. An id that is a bare number says nothing in a text:
    /// masses and minutes are numbers, too.
    /// </summary>
    /// <remarks>It says where to look; what goes of itself goes by what stands there to the letter.</remarks>
    public bool IsNamedIn(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsSpelledIn(text) || IsFoldedIn(FoldedWords.Of(text)) || IsFoldedIn(FoldedWords.WrittenOut(text));
    }

    private bool IsSpelledIn(string text) => Array.Exists(_words, word => !word.All(char.IsAsciiDigit) && Stands(word, text));

    /// <summary>Where the name is a part of another one's longer name, that one is meant.</summary>
    private bool IsFoldedIn(IReadOnlyList<string> words)
    {
        bool StandsAt(string[] name, int at) =>
            at >= 0 && at + name.Length <= words.Count && name.Index().All(word => words[at + word.Index] == word.Item);
        bool IsPartOfAnother(string[] name, int at) =>
            Array.Exists(_othersFolded, other =>
                other.Length > name.Length
                && Enumerable.Range(0, other.Length - name.Length + 1).Any(before => StandsAt(other, at - before))
            );
        return Enumerable.Range(0, words.Count).Any(at => Array.Exists(_folded, name => StandsAt(name, at) && !IsPartOfAnother(name, at)));
    }

    /// <summary>A name of two words or more, begun at each of them, in both ways of writing umlauts; a single word is many people's.</summary>
    private static string[][] Folded(string name) =>
        [
            .. new[] { FoldedWords.Of(name), FoldedWords.WrittenOut(name) }
                .Where(words => words.Count > 1)
                .SelectMany(words => words.Select((_, begin) => (string[])[.. words.Skip(begin), .. words.Take(begin)])),
        ];

    /// <summary>
    /// True of cells that belong together and are somebody else's of the same name: one has that one's id, and none anything that is the
    /// student's alone.
    /// </summary>
    public bool IsOfNamesake(IReadOnlyCollection<string> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        return _namesakes.Length > 0
            && !cells.Any(cell => Array.Exists(_words, word => !_others.Contains(word.ToLowerInvariant()) && Stands(word, cell)))
            && cells.Any(cell => Array.Exists(_namesakes, other => other.Id.Equals(cell.Trim(), StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>
    /// True of a text out of a document of ours that means the student: nothing but the id, the student named as a whole word, or a file
    /// called by the id. There an id that is a bare number is one.
    /// </summary>
    public bool IsMeantBy(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Is(text) || IsSpelledIn(text) || IsFileOf(text);
    }

    private bool IsFileOf(string path)
    {
        var name = path[(path.LastIndexOf('/') + 1)..];
        return name.LastIndexOf('.') is var dot and > 0
            && dot + 1 < name.Length
            && char.IsAsciiLetter(name[dot + 1])
            && IsIdOf(name[..dot]);
    }

    /// <summary>
    /// True of a file's name, without its ending, that begins or ends with the student's id, which is no part of a longer one.
    /// </summary>
    public bool IsIdOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return (
                name.StartsWith(Who.Id, StringComparison.OrdinalIgnoreCase)
                && (name.Length == Who.Id.Length || !IsOfId(name[Who.Id.Length]))
            ) || (name.EndsWith(Who.Id, StringComparison.OrdinalIgnoreCase) && !IsOfId(name[^(Who.Id.Length + 1)]));
    }

    private static string[] Words(Student student) =>
        [
            .. new[] { student.Id, student.Name, student.Shown, student.Email }
                .OfType<string>()
                .Where(word => word.Trim().Length > 0)
                .Distinct(StringComparer.OrdinalIgnoreCase),
        ];

    private static bool Stands(string word, string text)
    {
        for (
            var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase);
            at >= 0;
            at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase)
        )
        {
            var end = at + word.Length;
            if ((at == 0 || !IsOfWord(text[at - 1])) && (end == text.Length || !IsOfWord(text[end])))
                return true;
        }
        return false;
    }

    private static bool IsOfWord(char letter) => char.IsLetterOrDigit(letter) || letter is '-' or '_';

    private static bool IsOfId(char letter) => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' or '.';
}
