using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Regrading;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Files;
using ClassKit.Wording.Flags;

namespace ClassKit.UseCases.Grading;

/// <summary>grades.json, from the grades of a class.</summary>
public static class GradesJson
{
    /// <summary>The file's name within a graded folder.</summary>
    public const string FileName = "grades.json";

    private const string Remedy = "Take grades.json as grading wrote it, or grade again.";

    /// <summary>What an earlier grading put on record.</summary>
    /// <param name="file">How messages name the file.</param>
    /// <param name="text">What is in it.</param>
    public static Reading<EarlierGrades> Read(string file, string text) => UntrustedJson.Read<GradesDocument, EarlierGrades>(file, text, Remedy, GradesShape.Default, typed: true, document => Read(file, document));

    /// <summary>Reads the file at a path.</summary>
    internal static Reading<EarlierGrades> ReadFile(string path) => UntrustedJson.ReadFile<GradesDocument, EarlierGrades>(path, Remedy, GradesShape.Default, typed: true, document => Read(path, document));

    private static Reading<EarlierGrades> Read(string file, GradesDocument document)
    {
        List<Diagnostic> broken = [.. GradesRules.Broken(document).Take(20).Select(what => new Diagnostic(file, null, what, Remedy))];
        return broken.Count == 0 ? new(Model(document), []) : new(null, broken);
    }

    private static EarlierGrades Model(GradesDocument document)
    {
        return new([.. document.Students.Select(student => new EarlierGrades.Student(
            student.Id, student.Status, student.File, student.Points, student.OutOf,
            [.. student.Answers.Select(answer => new EarlierGrades.Answer(
                answer.Exercise, answer.Part, answer.Outcome, answer.Points, answer.OutOf, answer.Expected, answer.Correction?.Reason)
                {
                    Misconception = answer.Misconception,
                })])
        {
            Late = student.Late is { } late ? new(late.Days, late.Off) { By = TimeSpan.FromMinutes(late.Minutes ?? 0) } : null,
        })])
        {
            Judging = JudgeEntries.Model(document),
            Due = document.Due is { } due ? new(due.At, ClassTimeZone.Find(due.TimeZone)!) : null,
        };
    }

    /// <summary>The file's text.</summary>
    public static string Write(ClassGrades grades) => JsonStyle.Write(Document(grades), JsonStyle.For(GradesShape.Default));

    /// <summary>Writes the file, one student and one file at a time.</summary>
    public static void Write(Stream stream, ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(stream);
        JsonStyle.Write(stream, Document(grades), JsonStyle.For(GradesShape.Default));
    }

    private static GradesDocument Document(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var used = JudgeEntries.Used(grades.Judging);
        return new(
            new Projected<StudentGrade, GradesDocument.StudentEntry>(grades.Students, grade => Entry(grade, [.. used[grade.Who.Id]])),
            new Projected<AccountedFile, GradesDocument.UnmatchedEntry>(grades.Unmatched, file => new(file.File, UncountedWords.Of(file))),
            new Projected<AccountedFile, GradesDocument.FileEntry>(grades.Files, Entry))
        {
            Judge = grades.Judging is { } judging ? JudgeEntries.Of(judging) : null,
            Due = grades.Due is { } due ? new(due.At, due.Zone.Id) : null,
        };
    }

    private static GradesDocument.FileEntry Entry(AccountedFile file) =>
        new(file.File, file.Digest, file.Modified, OutcomeWords.Of(file.Fate), file.Student?.Id, UncountedWords.Of(file));

    private static GradesDocument.StudentEntry Entry(StudentGrade grade, IReadOnlyList<GradesDocument.UsedEntry> used) => new(
        grade.Who.Id, grade.Who.Name, OutcomeWords.Of(grade.Status), grade.File, grade.Points, grade.OutOf,
        [.. grade.Answers.Select(Entry)],
        [.. grade.Flags.Select(flag => new GradesDocument.FlagEntry(flag.Code, FlagWords.Of(flag)))])
    {
        Late = grade.Late is { } late ? new(late.Days, late.Off) { Minutes = (long)late.By.TotalMinutes } : null,
        Fresh = used.Count > 0 ? used : null,
        Uncounted = grade.Total.Uncounted is { Count: > 0 } uncounted ? [.. uncounted] : null,
    };

    private static GradesDocument.AnswerEntry Entry(AnswerGrade answer) => new(
        answer.Exercise.Id, answer.Part.Id, OutcomeWords.Of(answer.Outcome), answer.Points, answer.OutOf, PlainValue.Of(answer.Value), answer.Expected,
        answer.Formula, answer.Misconception?.Id, FindingWords.Of(answer))
    {
        Correction = answer.Correction is { } correction ? new(correction.AsGraded, correction.Reason) : null,
    };
}
