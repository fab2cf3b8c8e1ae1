using System.Text.RegularExpressions;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Grading.Pseudonyms;

/// <summary>
/// Takes the names, ids and mail addresses of a class out of what students typed. Our own sentences never pass here: a student named Will
/// would take their “will”.
/// </summary>
internal sealed partial class NameScrubber
{
    private const string Gap = "…";

    private readonly Dictionary<string, string> _instead = new(StringComparer.OrdinalIgnoreCase);
    private readonly Regex _names;

    /// <param name="key">The students and their pseudonyms.</param>
    public NameScrubber(PseudonymKey key)
    {
        foreach (var (student, pseudonym) in key.Entries)
        {
            foreach (var whole in (string?[])[student.Name, student.Id, student.Email])
            {
                if (!string.IsNullOrWhiteSpace(whole))
                    _instead.TryAdd(whole, pseudonym);
            }
        }

        // A first name alone says who it is, and not which of two it is.
        foreach (var word in key.Entries.SelectMany(entry => NameParts(entry.Student)))
            _instead.TryAdd(word, Gap);
        _names = new(
            @"(?<![\p{L}\p{Nd}])("
                + string.Join('|', _instead.Keys.OrderByDescending(name => name.Length).Select(Regex.Escape))
                + @")(?![\p{L}\p{Nd}])",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
        );
    }

    /// <summary>A typed text without them; in a formula functions stay, though students may be called like one.</summary>
    public string Scrub(string text)
    {
        text = MailAddress().Replace(text, Gap);
        return _names.Replace(text, name => IsFunction(text, name) ? name.Value : _instead[name.Value]);
    }

    private static bool IsFunction(string text, Match name) =>
        text.StartsWith('=') && text.AsSpan(name.Index + name.Length).StartsWith("(");

    private static IEnumerable<string> NameParts(Student student) =>
        student
            .Name.Split([' ', '-', '\u00A0'], StringSplitOptions.RemoveEmptyEntries)
            .Concat(student.Id.Split('-', '_', '.'))
            .Where(part => part.Count(char.IsLetter) >= 3);

    [GeneratedRegex(@"[^\s<>""'(),;:]+@[^\s<>""'(),;:]+")]
    private static partial Regex MailAddress();
}
