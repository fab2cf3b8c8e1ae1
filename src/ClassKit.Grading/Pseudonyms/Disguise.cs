using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Pseudonyms;

/// <summary>What students, files and typed texts are called instead.</summary>
/// <param name="key">The students and their pseudonyms.</param>
/// <param name="paths">The names of files, by their paths.</param>
internal sealed class Disguise(PseudonymKey key, IReadOnlyDictionary<string, string> paths) : IDisguise
{
    private const string UnknownFile = "…";

    private readonly NameScrubber _scrubber = new(key);

    public Student OfStudent(Student student) => key.Of(student);

    public string OfFile(string path) => paths.GetValueOrDefault(path, UnknownFile);

    public string OfTyped(string typed) => _scrubber.Scrub(typed);
}
