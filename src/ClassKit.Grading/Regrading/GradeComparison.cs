using ClassKit.Grading.Numbers;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Regrading;

/// <summary>Holds a new grading against the record of an earlier one: who changes, and why.</summary>
public static class GradeComparison
{
    /// <summary>Records of earlier versions hold points with the noise of doubles.</summary>
    private const decimal SamePoints = 0.000000001m;

    /// <summary>Everyone who changes, in the order of the class.</summary>
    public static IReadOnlyList<GradeChange> Between(ClassGrades earlier, ClassGrades now)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(now);
        var records = earlier.Students.ToDictionary(student => student.Who.Id);
        return
        [
            .. now
                .Students.Select(student => Between(records.GetValueOrDefault(student.Who.Id), student))
                .Where(change => change.Answers.Count > 0 || change.Why.Count > 0),
        ];
    }

    /// <summary>Everyone whose answers are judged or credited otherwise although the very same file was graded, by its digest.</summary>
    public static IReadOnlyList<GradeChange> OfSameFiles(ClassGrades earlier, ClassGrades now)
    {
        var (before, after) = (Digests(earlier), Digests(now));
        return
        [
            .. Between(earlier, now)
                .Where(change =>
                    change.Answers.Count > 0
                    && before.GetValueOrDefault(change.Student.Id) is { } digest
                    && digest == after.GetValueOrDefault(change.Student.Id)
                ),
        ];
    }

    private static Dictionary<string, string?> Digests(ClassGrades grades) =>
        grades
            .Files.Where(file => file is { Fate: FileFate.Graded, Student: not null })
            .ToDictionary(file => file.Student!.Id, file => file.Digest);

    private static GradeChange Between(StudentGrade? before, StudentGrade now)
    {
        var records = before?.Answers.ToDictionary(answer => (answer.Exercise.Id, answer.Part.Id)) ?? [];
        List<AnswerChange> answers = [];
        foreach (var answer in now.Answers)
        {
            var record = records.GetValueOrDefault((answer.Exercise.Id, answer.Part.Id));
            if (Why(record, answer) is { Count: > 0 } why)
                answers.Add(new(answer, record?.Points, why));
        }
        List<StudentCause> whole = [.. Why(before, now)];
        if (
            before is not null
            && answers.Count == 0
            && whole.Count == 0
            && (Differ(before.Points, now.Points) || Differ(before.OutOf, now.OutOf))
        )
            whole.Add(new StudentCause.OtherTotal(now.Rule, [.. now.Total.Uncounted]));
        return new(now.Who, (before?.Points ?? 0, before?.OutOf ?? 0), (now.Points, now.OutOf), answers, whole);
    }

    private static bool Differ(decimal before, decimal now) => Math.Abs(before - now) > SamePoints;

    private static IEnumerable<StudentCause> Why(StudentGrade? before, StudentGrade now)
    {
        if (before is null)
            yield return new StudentCause.NotOnRecord();
        else if (before.File != now.File)
            yield return new StudentCause.OtherFile(now.File, before.File);
        if ((before?.Late?.Days, before?.Late?.Off) != (now.Late?.Days, now.Late?.Off))
            yield return new StudentCause.OtherLateness(now.Late);
        if (before?.Answers.Count > 0 && now.Answers.Count == 0)
            yield return new StudentCause.NothingGraded();
    }

    private static List<AnswerCause> Why(AnswerGrade? before, AnswerGrade now)
    {
        if (before is null)
            return now.Points > 0 ? [new AnswerCause.NotOnRecord()] : [];
        var differs = Differ(before.Points, now.Points) || Differ(before.OutOf, now.OutOf);
        if (!differs && before.Outcome == now.Outcome && before.Correction?.Reason == now.Correction?.Reason)
            return [];
        var why = new List<AnswerCause>();
        if (!Near.Written.Same(before.Expected, now.Expected))
            why.Add(new AnswerCause.OtherKey(now.Expected, before.Expected));
        if (before.Outcome != now.Outcome)
            why.Add(new AnswerCause.OtherOutcome(now.Outcome, before.Outcome));
        if (before.Correction?.Reason != now.Correction?.Reason)
            why.Add(
                now.Correction is { } correction
                    ? new AnswerCause.Corrected(correction.Reason)
                    : new AnswerCause.NotCorrectedAnyMore(before.Correction!.Reason)
            );
        if (why.Count == 0)
            why.Add(
                before.Correction is null
                    ? new AnswerCause.OtherShare(now.Outcome, Share(now.Points, now.OutOf), Share(before.Points, before.OutOf))
                    : new AnswerCause.CorrectedOtherwise()
            );
        return why;
    }

    private static decimal? Share(decimal points, decimal outOf) => outOf > 0 ? points / outOf : null;
}
