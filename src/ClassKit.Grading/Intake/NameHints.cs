using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Intake;

/// <summary>
/// Whom the name of a returned file speaks of. Course sites, mail programs and phones put much around names, and turn them about.
/// </summary>
/// <remarks>
/// A student is meant by their id, by their whole name in either order, or by two words of a name of three or more. The longest of several
/// wins; two that are equally long are no hint.
/// </remarks>
internal sealed class NameHints
{
    /// <summary>The most words that are put together again, as a camel-cased or hyphenated name may have been taken apart.</summary>
    private const int LongestRun = 8;

    private readonly DealtClass _dealt;
    private readonly Dictionary<string, List<int>> _whole = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<int>> _words = new(StringComparer.Ordinal);
    private readonly int[] _wordsNeeded;

    public NameHints(DealtClass dealt)
    {
        _dealt = dealt;
        _wordsNeeded = new int[dealt.Students.Count];
        for (var student = 0; student < dealt.Students.Count; student++)
        {
            var (id, name) = (dealt.Students[student].Who.Id, dealt.Students[student].Who.Name);
            Add(_whole, string.Concat(FoldedWords.Of(id)), student);
            AddName(FoldedWords.Of(name), student);
            AddName(FoldedWords.WrittenOut(name), student);
        }
    }

    /// <summary>Whom a path speaks of: its last part that speaks of anyone.</summary>
    public DealtStudent? Of(string path)
    {
        var parts = path.Split('/');
        for (var at = parts.Length - 1; at >= 0; at--)
        {
            if (InPart(EncodedText.Decode(at == parts.Length - 1 ? Path.GetFileNameWithoutExtension(parts[at]) : parts[at])) is { } student)
                return student;
        }

        return null;
    }

    /// <summary>
    /// The only student of whose name a file's own name has a word: a first name alone is no proof of anything, and worth a question.
    /// </summary>
    public DealtStudent? OfOneWord(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var named = FoldedWords
            .Of(EncodedText.Decode(Path.GetFileNameWithoutExtension(path)))
            .SelectMany(word => _words.GetValueOrDefault(word, []))
            .Distinct()
            .Take(2)
            .ToList();
        return named is [var only] ? _dealt.Students[only] : null;
    }

    private DealtStudent? InPart(string text)
    {
        var runs = Runs(FoldedWords.Of(text));
        var best = runs.SelectMany(
                run => _whole.GetValueOrDefault(run, []),
                (run, student) => (Student: student, Letters: run.Length, IsWhole: true)
            )
            .Concat(InPieces(runs))
            .GroupBy(hint => hint.Student, (student, hints) => (Student: student, Best: hints.Max(hint => (hint.Letters, hint.IsWhole))))
            .OrderByDescending(hint => hint.Best)
            .Take(2)
            .ToList();
        return best.Count == 1 || (best.Count == 2 && best[0].Best != best[1].Best) ? _dealt.Students[best[0].Student] : null;
    }

    /// <summary>The students of whose names enough words are there, with anything between them.</summary>
    private IEnumerable<(int Student, int Letters, bool IsWhole)> InPieces(HashSet<string> runs) =>
        runs.SelectMany(run => _words.GetValueOrDefault(run, []), (run, student) => (Word: run, Student: student))
            .GroupBy(met => met.Student)
            .Where(met => met.Count() >= _wordsNeeded[met.Key])
            .Select(met => (met.Key, met.Sum(word => word.Word.Length), IsWhole: false));

    private void AddName(IReadOnlyList<string> words, int student)
    {
        if (words.Count == 0)
            return;
        Add(_whole, string.Concat(words), student);
        Add(_whole, words[^1] + string.Concat(words.Take(words.Count - 1)), student);
        if (words.Count == 1)
            return;
        _wordsNeeded[student] = 2;
        foreach (var word in words)
            Add(_words, word, student);
    }

    private static HashSet<string> Runs(IReadOnlyList<string> words)
    {
        var runs = new HashSet<string>(StringComparer.Ordinal);
        for (var from = 0; from < words.Count; from++)
        {
            var run = "";
            for (var to = from; to < Math.Min(words.Count, from + LongestRun); to++)
                runs.Add(run += words[to]);
        }

        return runs;
    }

    private static void Add(Dictionary<string, List<int>> index, string key, int student)
    {
        if (key.Length == 0)
            return;
        if (!index.TryGetValue(key, out var students))
            index[key] = students = [];
        if (!students.Contains(student))
            students.Add(student);
    }
}
