using System.Globalization;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Pseudonyms;

/// <summary>Grades without names, to show to colleagues or to keep for comparison.</summary>
/// <remarks>
/// Students stand in the order of their pseudonyms, since that of the roster would tell who they are. Digests of files are left out: they
/// are names too, for whoever has the files; so are the seed of the deal, for whoever has the class list, the times of files and what was
/// arranged with somebody. The numbers that a student was dealt stay, since nothing could be read without them, and which exercises somebody
/// was not dealt: whoever has the sheets or the deal's folder can tell whose they are.
/// </remarks>
public static class Pseudonymizer
{
    private const int LongestEnding = 5;

    /// <summary>The same grades under pseudonyms.</summary>
    public static ClassGrades Apply(ClassGrades grades, PseudonymKey key)
    {
        ArgumentNullException.ThrowIfNull(grades);
        ArgumentNullException.ThrowIfNull(key);
        var disguise = new Disguise(key, Paths(grades, key));
        var pool = new AnswerPool();
        var seats = grades.Dealt.Students.ToDictionary(seat => seat.Who.Id, seat => Seat(seat, disguise), StringComparer.Ordinal);
        return new(
            grades.Dealt with
            {
                Students = InOrder(seats.Values),
                // With the seed and the class list anybody deals the same numbers again, and sees whose they are.
                Seed = 0,
                Identity = null,
            },
            [.. grades.Students.Select(student => Of(student, disguise, pool)).OrderBy(student => student.Who.Id, StringComparer.Ordinal)],
            [.. grades.Files.Select(file => Of(file, disguise)).OrderBy(file => file.File, StringComparer.Ordinal)]
        )
        {
            Due = grades.Due,
            Judging = grades.Judging is { } judging ? judging with { Choices = [] } : null,
        };
    }

    private static List<DealtStudent> InOrder(IEnumerable<DealtStudent> seats) =>
        [.. seats.OrderBy(seat => seat.Who.Id, StringComparer.Ordinal)];

    private static DealtStudent Seat(DealtStudent seat, Disguise disguise) =>
        seat with
        {
            Who = disguise.OfStudent(seat.Who),
            Workbook = $"workbooks/{disguise.OfStudent(seat.Who).Id}.xlsx",
            // Of large print, more time or a day of one's own there is one in a class, and everybody knows who.
            LargePrint = false,
            ExtraTime = 0,
            Due = null,
        };

    private static StudentGrade Of(StudentGrade student, Disguise disguise, AnswerPool pool) =>
        student with
        {
            Who = disguise.OfStudent(student.Who),
            File = student.File is { } file ? disguise.OfFile(file) : null,
            Answers = pool.Pack(student.Answers.Select(answer => Of(answer, disguise))),
            Flags = [.. student.Flags.Select(flag => flag.Under(disguise))],
        };

    private static AnswerGrade Of(AnswerGrade answer, Disguise disguise) =>
        answer with
        {
            // How somebody writes tells who it is, whatever names are taken out.
            Value =
                answer.Part.InWords is not null ? CellValue.Blank
                : answer.Value.IsText ? CellValue.FromText(disguise.OfTyped(answer.Value.Text))
                : answer.Value,
            Formula = answer.Formula is { } formula ? disguise.OfTyped(formula) : null,
            Findings = [.. answer.Findings.Select(finding => finding.Under(disguise))],
            Correction = answer.Correction is { } correction ? correction with { Reason = disguise.OfTyped(correction.Reason) } : null,
        };

    private static AccountedFile Of(AccountedFile file, Disguise disguise) =>
        file with
        {
            File = disguise.OfFile(file.File),
            Digest = null,
            Modified = null,
            Student = file.Student is { } student ? disguise.OfStudent(student) : null,
            Why = file.Why?.Under(disguise),
            Other = file.Other?.Under(disguise),
        };

    /// <summary>What to call files instead: by their student's pseudonym and a number.</summary>
    private static Dictionary<string, string> Paths(ClassGrades grades, PseudonymKey key)
    {
        var paths = new Dictionary<string, string>(StringComparer.Ordinal);
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        var files = grades
            .Files.Select(file => (file.File, file.Student))
            .Concat(
                grades
                    .Students.Where(student => student.File is not null)
                    .Select(student => (File: student.File!, Student: (Student?)student.Who))
            );
        foreach (var (file, student) in files.Where(file => !paths.ContainsKey(file.File)).DistinctBy(file => file.File))
        {
            var stem = student is null ? "file" : key.Of(student).Id;
            var count = counts[stem] = counts.GetValueOrDefault(stem) + 1;
            paths[file] = string.Create(CultureInfo.InvariantCulture, $"{stem}-{count}{Ending(file)}");
        }

        return paths;
    }

    private static string Ending(string file) =>
        Path.GetExtension(file) is { Length: > 1 and <= LongestEnding } ending && ending[1..].All(char.IsAsciiLetterOrDigit)
            ? ending.ToLowerInvariant()
            : "";
}
