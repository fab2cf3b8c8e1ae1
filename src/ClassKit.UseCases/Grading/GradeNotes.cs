using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor should know of a grading at a glance.</summary>
public static class GradeNotes
{
    /// <summary>The notes, the most important first.</summary>
    public static IReadOnlyList<Note> Of(GradeResult graded)
    {
        ArgumentNullException.ThrowIfNull(graded);
        var (grades, summary) = (graded.Grades, graded.Summary);
        var parts = ClassPart.Of(grades.Students.Count);
        List<Note> notes = [.. Note.OtherDeals.In(grades) is { } others ? [others] : (IEnumerable<Note>)[], Counts(grades)];
        var onPaper = grades.Students.Count(student => student.IsFromPaper);
        if (onPaper > 0)
            notes.Add(new Note.OnPaper(onPaper));
        notes.AddRange(graded.PaperFaults.Select(fault => new Note.PaperFault(fault)));
        notes.AddRange(grades.Files.Where(file => file.Fault is not null).Select(file => new Note.NotJudged(new(file.File), file.Fault!)));
        if (grades.Students.Where(student => student.CameBackEmpty).ToList() is { Count: > 0 } empty)
            notes.Add(new Note.CameBackEmpty([.. empty.Select(student => student.Who)], CorrectionsReader.FileName));
        var corrected = grades.Students.SelectMany(student => student.Answers).Count(answer => answer.Correction is not null);
        if (corrected > 0)
            notes.Add(new Note.Corrected(corrected));
        var written = WrittenAnswer.In(grades).Count(one => one.Answer.IsUndecided);
        if (written > 0)
            notes.Add(new Note.WrittenAnswers(written, parts[0].Named(GradeFiles.WrittenAnswers)));
        notes.AddRange(GradebookNotes.Of(grades));
        var flagged = grades.Students.Count(student => student.Flags.Count > 0);
        if (flagged > 0)
            notes.Add(new Note.Flagged(flagged));
        // Of what nobody tried, nothing is known that could be taught again.
        if (summary.TeachAgain.FirstOrDefault(part => part.Judged > part.Counts[Outcome.Blank]) is { } first)
            notes.Add(new Note.TeachAgain(first));
        if (parts.Count > 1)
            notes.Add(
                new Note.InParts(parts[0].Named(TypedIntoGradebook.FileName), parts[^1].Named(TypedIntoGradebook.FileName), parts.Count)
            );
        return [.. notes, .. DeadlineNotes.Of(graded.Deadline), .. JudgeNotes.Again(graded)];
    }

    /// <summary>What the instructor may want to do about it.</summary>
    public static IReadOnlyList<Remedy> Remedies(GradeResult graded)
    {
        ArgumentNullException.ThrowIfNull(graded);
        return
        [
            .. graded.Grades.Waiting.Any(one => one.Fault is null) ? [Remedy.TakeOverPoints] : (IEnumerable<Remedy>)[],
            .. graded.Deadline.IsNamed ? DueRemedies.Of(graded.Deadline.Moment) : [],
        ];
    }

    private static Note.Graded Counts(ClassGrades grades)
    {
        int With(GradeStatus status) => grades.Students.Count(student => student.Status == status);
        var leftovers = grades.Files.Count(file => file.Fate == FileFate.Leftover);
        return new(
            grades.Students.Count,
            With(GradeStatus.Graded),
            With(GradeStatus.Missing),
            With(GradeStatus.Unreadable),
            grades.Unmatched.Count - leftovers,
            leftovers
        );
    }
}
