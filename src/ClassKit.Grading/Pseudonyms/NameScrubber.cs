using System.Text.RegularExpressions;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Takes the names, ids and mail addresses of a class out of what students and their file names brought in.</summary>
internal sealed partial class NameScrubber
{
    private const string Gap = "…";

    private readonly List<(string Found, string Instead)> _paths;
    private readonly Dictionary<string, string> _instead = new(StringComparer.OrdinalIgnoreCase);
    private readonly Regex _names;

    /// <param name="key">The students and their pseudonyms.</param>
    /// <param name="paths">The paths of files, which speak of students too, and what to write instead.</param>
    public NameScrubber(PseudonymKey key, IReadOnlyDictionary<string, string> paths)
    {
        _paths = [.. paths.Select(path => (path.Key, path.Value)).OrderByDescending(path => path.Key.Length)];
        foreach (var (student, pseudonym) in key.Entries)
        {
            foreach (var whole in (string?[])[student.Name, student.Id, student.Email])
            {
                if (!string.IsNullOrWhiteSpace(whole)) _instead.TryAdd(whole, pseudonym);
            }
        }

        // A first name alone says who it is, and not which of two it is.
        foreach (var word in key.Entries.SelectMany(entry => NameParts(entry.Student))) _instead.TryAdd(word, Gap);
        _names = new(@"(?<![\p{L}\p{Nd}])(" + string.Join('|', _instead.Keys.OrderByDescending(name => name.Length).Select(Regex.Escape)) + @")(?![\p{L}\p{Nd}])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
    }

    /// <summary>A text without them.</summary>
    public string Scrub(string text)
    {
        foreach (var (found, instead) in _paths) text = text.Replace(found, instead, StringComparison.Ordinal);
        text = MailAddress().Replace(text, Gap);
        return _names.Replace(text, name => _instead[name.Value]);
    }

    private static IEnumerable<string> NameParts(Student student) =>
        student.Name.Split([' ', '-', '\u00A0'], StringSplitOptions.RemoveEmptyEntries).Concat(student.Id.Split('-', '_', '.')).Where(part => part.Count(char.IsLetter) >= 3);

    [GeneratedRegex(@"[^\s<>""'(),;:]+@[^\s<>""'(),;:]+")]
    private static partial Regex MailAddress();
}
