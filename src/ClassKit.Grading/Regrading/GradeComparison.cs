using System.Globalization;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Holds a new grading against the record of an earlier one: who changes, and why.</summary>
public static class GradeComparison
{
    /// <summary>Closer than any two numbers that a record tells apart.</summary>
    private const double Same = 1e-9;

    /// <summary>Records of earlier versions hold points with the noise of doubles.</summary>
    private const decimal SamePoints = 0.000000001m;

    /// <summary>Everyone who changes, in the order of the class.</summary>
    public static IReadOnlyList<GradeChange> Between(EarlierGrades earlier, ClassGrades now)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(now);
        var records = earlier.Students.ToDictionary(student => student.Id);
        return
        [
            .. now.Students
                .Select(student => Between(records.GetValueOrDefault(student.Student.Student.Id), student))
                .Where(change => change.Answers.Count > 0 || change.Why.Count > 0),
        ];
    }

    private static GradeChange Between(EarlierGrades.Student? before, StudentGrade now)
    {
        var records = before?.Answers.ToDictionary(answer => (answer.Exercise, answer.Part)) ?? [];
        List<AnswerChange> answers = [];
        foreach (var answer in now.Answers)
        {
            var record = records.GetValueOrDefault((answer.Exercise.Id, answer.Part.Id));
            if (Why(record, answer) is { Count: > 0 } why) answers.Add(new(answer, record?.Points, why));
        }
        List<string> whole = [.. Why(before, now)];
        if (before is not null && answers.Count == 0 && whole.Count == 0 && (Differ(before.Points, now.Points) || Differ(before.OutOf, now.OutOf))) whole.Add(Totalling(now));
        return new(now.Student.Student, (before?.Points ?? 0, before?.OutOf ?? 0), (now.Points, now.OutOf), answers, whole);
    }

    private static bool Differ(decimal before, decimal now) => Math.Abs(before - now) > SamePoints;

    /// <summary>Why a total differs whose answers do not.</summary>
    private static string Totalling(StudentGrade now) => now.Rule.Words.Length == 0
        ? "everything counts now"
        : $"{now.Rule.Words.TrimEnd('.')} now{(now.Total.Uncounted.Count > 0 ? $": not {string.Join(", ", now.Total.Uncounted)}" : "")}";

    private static IEnumerable<string> Why(EarlierGrades.Student? before, StudentGrade now)
    {
        if (before is null) yield return "not on record before";
        else if (before.File != now.File) yield return $"{now.File ?? "no file"} is graded now, {before.File ?? "none"} was before";
        if ((before?.Late?.Days, before?.Late?.Off) != (now.Late?.Days, now.Late?.Off)) yield return Lateness(now.Late);
        if (before?.Answers.Count > 0 && now.Answers.Count == 0) yield return "nothing is graded any more";
    }

    private static List<string> Why(EarlierGrades.Answer? before, AnswerGrade now)
    {
        if (before is null) return now.Points > 0 ? ["no answer on record before"] : [];
        var differs = Differ(before.Points, now.Points) || Differ(before.OutOf, now.OutOf);
        if (!differs && before.Outcome == OutcomeWords.Of(now.Outcome) && before.Correction == now.Correction?.Reason) return [];
        var why = new List<string>();
        if (Math.Abs(before.Expected - now.Expected) > Same * Math.Max(1, Math.Abs(before.Expected)))
            why.Add($"the key gives {ResultText.Of(now.Part, now.Expected)}, and gave {ResultText.Of(now.Part, before.Expected)}");
        if (before.Outcome != OutcomeWords.Of(now.Outcome)) why.Add($"{OutcomeWords.Of(now.Outcome)}, was {before.Outcome}");
        if (before.Correction != now.Correction?.Reason) why.Add(Corrected(before.Correction, now.Correction));
        if (why.Count == 0)
            why.Add(before.Correction is null ? $"{OutcomeWords.Of(now.Outcome)} earns {Share(now.Points, now.OutOf)}, and earned {Share(before.Points, before.OutOf)}" : "the correction sets other points");
        return why;
    }

    private static string Lateness(Late? late) => late is null
        ? "no longer late"
        : string.Create(CultureInfo.InvariantCulture, $"{late.Words} late, {100 * late.Off:0.#} % off");

    private static string Corrected(string? before, AppliedCorrection? now) => now is null
        ? $"no longer corrected ({before})"
        : $"corrected: {now.Reason}";

    private static string Share(decimal points, decimal outOf) =>
        outOf > 0 ? string.Create(CultureInfo.InvariantCulture, $"{100 * points / outOf:0.#} %") : "nothing";
}
