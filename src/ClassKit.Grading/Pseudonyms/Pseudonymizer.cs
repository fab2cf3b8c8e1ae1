using System.Globalization;
using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Grades without names, to show to colleagues or to keep for comparison.</summary>
/// <remarks>Students stand in the order of their pseudonyms, since that of the roster would tell who they are. Digests of files are left out: they are names too, for whoever has the files.</remarks>
public static class Pseudonymizer
{
    private const int LongestEnding = 5;

    /// <summary>The same grades under pseudonyms.</summary>
    public static ClassGrades Apply(ClassGrades grades, PseudonymKey key)
    {
        ArgumentNullException.ThrowIfNull(grades);
        ArgumentNullException.ThrowIfNull(key);
        var paths = Paths(grades, key);
        var scrubber = new NameScrubber(key, paths);
        var seats = grades.Dealt.Students.ToDictionary(seat => seat.Student.Id, seat => Seat(seat, key), StringComparer.Ordinal);
        return new(
            grades.Dealt with { Students = InOrder(seats.Values) },
            [.. grades.Students.Select(student => Of(student, seats[student.Student.Student.Id], paths, scrubber)).OrderBy(student => student.Student.Student.Id, StringComparer.Ordinal)],
            [.. grades.Files.Select(file => Of(file, key, paths, scrubber)).OrderBy(file => file.File, StringComparer.Ordinal)])
        {
            Judging = grades.Judging is { } judging ? judging with { Choices = [] } : null,
        };
    }

    private static List<DealtStudent> InOrder(IEnumerable<DealtStudent> seats) => [.. seats.OrderBy(seat => seat.Student.Id, StringComparer.Ordinal)];

    private static DealtStudent Seat(DealtStudent seat, PseudonymKey key) =>
        seat with { Student = key.Of(seat.Student), Workbook = $"workbooks/{key.Of(seat.Student).Id}.xlsx" };

    private static StudentGrade Of(StudentGrade student, DealtStudent seat, Dictionary<string, string> paths, NameScrubber scrubber) => student with
    {
        Student = seat,
        File = student.File is { } file ? paths[file] : null,
        Answers = [.. student.Answers.Select(answer => Of(answer, scrubber))],
        Flags = [.. student.Flags.Select(flag => flag with { Message = scrubber.Scrub(flag.Message) })],
    };

    private static AnswerGrade Of(AnswerGrade answer, NameScrubber scrubber) => answer with
    {
        Value = answer.Value.IsText ? CellValue.FromText(scrubber.Scrub(answer.Value.Text)) : answer.Value,
        Formula = answer.Formula is { } formula ? scrubber.Scrub(formula) : null,
        Note = scrubber.Scrub(answer.Note),
        Correction = answer.Correction is { } correction ? correction with { Reason = scrubber.Scrub(correction.Reason) } : null,
    };

    private static AccountedFile Of(AccountedFile file, PseudonymKey key, Dictionary<string, string> paths, NameScrubber scrubber) => file with
    {
        File = paths[file.File],
        Digest = null,
        SavedBy = null,
        Student = file.Student is { } student ? key.Of(student) : null,
        Reason = scrubber.Scrub(file.Reason),
    };

    /// <summary>What to call files instead: by their student's pseudonym and a number.</summary>
    private static Dictionary<string, string> Paths(ClassGrades grades, PseudonymKey key)
    {
        var paths = new Dictionary<string, string>(StringComparer.Ordinal);
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        var files = grades.Files.Select(file => (file.File, file.Student))
            .Concat(grades.Students.Where(student => student.File is not null).Select(student => (File: student.File!, Student: (Student?)student.Student.Student)));
        foreach (var (file, student) in files.Where(file => !paths.ContainsKey(file.File)).DistinctBy(file => file.File))
        {
            var stem = student is null ? "file" : key.Of(student).Id;
            var count = counts[stem] = counts.GetValueOrDefault(stem) + 1;
            paths[file] = string.Create(CultureInfo.InvariantCulture, $"{stem}-{count}{Ending(file)}");
        }

        return paths;
    }

    private static string Ending(string file) =>
        Path.GetExtension(file) is { Length: > 1 and <= LongestEnding } ending && ending[1..].All(char.IsAsciiLetterOrDigit) ? ending.ToLowerInvariant() : "";
}
