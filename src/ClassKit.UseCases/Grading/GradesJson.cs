using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading.Facts;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Files;
using ClassKit.Wording.Flags;

namespace ClassKit.UseCases.Grading;

/// <summary>grades.json, to and from the grades of a class.</summary>
public static class GradesJson
{
    /// <summary>The file's name within a graded folder.</summary>
    public const string FileName = "grades.json";

    private const string Remedy = "Take grades.json as grading wrote it, or grade again.";

    /// <summary>More than these nobody mends by hand.</summary>
    private const int MostProblems = 20;

    /// <summary>What an earlier grading put on record, equal in every field to the grades that were written.</summary>
    /// <param name="file">How messages name the file.</param>
    /// <param name="text">What is in it.</param>
    /// <param name="dealt">What was dealt to whom, which the record does not hold; null where it is not at hand, for a record without
    /// variants.</param>
    public static Reading<ClassGrades> Read(string file, string text, DealtClass? dealt) =>
        UntrustedJson.Read<GradesDocument, ClassGrades>(file, text, Remedy, GradesShape.Default, typed: true, document =>
            Read(file, document, dealt)
        );

    /// <summary>Reads the file at a path.</summary>
    internal static Reading<ClassGrades> ReadFile(string path, DealtClass? dealt) =>
        UntrustedJson.ReadFile<GradesDocument, ClassGrades>(path, Remedy, GradesShape.Default, typed: true, document =>
            Read(path, document, dealt)
        );

    private static Reading<ClassGrades> Read(string file, GradesDocument document, DealtClass? dealt)
    {
        var broken = GradesRules.Broken(document).Take(MostProblems).ToList();
        var deal = broken.Count > 0 || document.Deal is null ? null : DealtJson.Model(document.Deal);
        if (deal is not null)
            broken.AddRange(DealtRules.Broken(document.Deal!, deal).Take(MostProblems).Select(what => $"the deal on record: {what}"));
        return broken.Count == 0
            ? new(GradesModel.Of(document, deal, dealt), [])
            : new(null, [.. broken.Select(what => new Diagnostic(file, null, what, Remedy))]);
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
        List<GradesDocument.TypedEntry> typed =
        [
            .. grades.Waiting.Select(one => Entry(one, takenOver: false)),
            .. grades.TakenOver.Select(one => Entry(one, takenOver: true)),
        ];
        return new(
            new(
                new Projected<StudentGrade, GradesDocument.GradedEntry>(grades.Students, grade =>
                    Entry(grade, grades.Dealt, grades.Due, [.. used[grade.Who.Id]])
                )
            ),
            new Projected<AccountedFile, GradesDocument.UnmatchedEntry>(grades.Unmatched, file => new(file.File, UncountedWords.Of(file))),
            new Projected<AccountedFile, GradesDocument.FileEntry>(grades.Files, Entry)
        )
        {
            Judge = grades.Judging is { } judging ? JudgeEntries.Of(judging) : null,
            Due = DueEntry.Of(grades.Due),
            Deal = DealtJson.Document(grades.Dealt with { Students = [] }),
            Typed = typed.Count > 0 ? typed : null,
            UnreadGradebooks =
                grades.UnreadGradebooks.Count > 0
                    ?
                    [
                        .. grades.UnreadGradebooks.Select(one => new GradesDocument.UnreadEntry(
                            one.File,
                            GradebookShapes.All.Entry(one.Why)
                        )),
                    ]
                    : null,
        };
    }

    private static GradesDocument.TypedEntry Entry(TypedPoints one, bool takenOver) =>
        new(
            one.File,
            one.Cell,
            one.Student.Id,
            one.Exercise,
            one.Part,
            one.Before,
            one.Typed,
            one.Points,
            one.Fault is { } fault ? GradebookShapes.Points.Entry(fault) : null,
            takenOver
        );

    private static GradesDocument.FileEntry Entry(AccountedFile file) =>
        new(file.File, file.Digest, file.Modified, OutcomeWords.Of(file.Fate), file.Student?.Id, UncountedWords.Of(file))
        {
            Why = file.Why is { } why ? UncountedShapes.All.Entry(why) : null,
            OtherDeal = file.Other is { } other ? UncountedShapes.Entry(other) : null,
            Fault = file.Fault,
        };

    private static GradesDocument.GradedEntry Entry(
        StudentGrade grade,
        DealtClass dealt,
        DueMoment? due,
        IReadOnlyList<GradesDocument.UsedEntry> used
    ) =>
        new(
            grade.Who.Id,
            grade.Who.Name,
            OutcomeWords.Of(grade.Status),
            grade.File,
            grade.Points,
            grade.OutOf,
            [.. grade.Answers.Select(Entry)],
            [
                .. grade.Flags.Select(flag => new GradesDocument.FlagEntry(flag.Code, FlagWords.Of(flag, dealt.Exercises))
                {
                    Fact = FlagShapes.All.Entry(flag),
                }),
            ]
        )
        {
            Late = grade.Late is { } late ? new(late.Days, late.Off) { Minutes = (long)late.By.TotalMinutes, By = late.By } : null,
            Due = grade.Flags.Select(DueOf).OfType<DueMoment>().FirstOrDefault() is { } own && own != due ? DueEntry.Of(own) : null,
            Fresh = used.Count > 0 ? used : null,
            SharesName = grade.Who.Shown != grade.Who.Name,
            Uncounted = grade.Total.Uncounted is { Count: > 0 } uncounted ? [.. uncounted] : null,
        };

    /// <summary>The moment that a flag speaks of; null for one that speaks of none.</summary>
    private static DueMoment? DueOf(Flag flag) =>
        flag switch
        {
            Flag.SavedLate late => late.Due,
            Flag.SavedUnclear unclear => unclear.Due,
            Flag.SavedAfterItCame after => after.Due,
            _ => null,
        };

    private static GradesDocument.AnswerEntry Entry(AnswerGrade answer) =>
        new(
            answer.Exercise.Id,
            answer.Part.Id,
            OutcomeWords.Of(answer.Outcome),
            answer.Points,
            answer.OutOf,
            PlainValue.Of(answer.Value),
            answer.Expected,
            answer.Formula,
            answer.Misconception?.Id,
            FindingWords.Of(answer)
        )
        {
            Correction = answer.Correction is { } correction ? new(correction.AsGraded, correction.Reason) : null,
            Chosen = answer.Chosen?.Id,
            Paper = answer.Paper is { } working ? OutcomeWords.Of(working) : null,
            IsError = answer.Value.IsError,
            Findings = [.. answer.Findings.Select(FindingShapes.All.Entry)],
            OwnEarlier = answer.OwnEarlierAnswers.Count > 0 ? answer.OwnEarlierAnswers : null,
        };
}
