using System.Diagnostics.CodeAnalysis;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>What students, files and typed texts are called instead.</summary>
/// <param name="key">The students and their pseudonyms.</param>
/// <param name="paths">The names of files, by their paths.</param>
internal sealed class Disguise(PseudonymKey key, IReadOnlyDictionary<string, string> paths)
{
    private const string UnknownFile = "…";

    private readonly NameScrubber _scrubber = new(key);

    public Student Of(Student student) => key.Of(student);

    public string OfFile(string path) => paths.GetValueOrDefault(path, UnknownFile);

    [return: NotNullIfNotNull(nameof(typed))]
    public string? OfTyped(string? typed) => typed is null ? null : _scrubber.Scrub(typed);

    public Sentence Of(Sentence sentence) => sentence.Told(Of, OfFile, text => OfTyped(text));
}
