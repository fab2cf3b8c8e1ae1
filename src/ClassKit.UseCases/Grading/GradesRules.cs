using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.Wording.Cohorts;

namespace ClassKit.UseCases.Grading;

/// <summary>What must hold of grades that were read from a file.</summary>
internal static class GradesRules
{
    private static readonly HashSet<string> Statuses = [.. Enum.GetValues<GradeStatus>().Select(OutcomeWords.Of)];
    private static readonly HashSet<string> Outcomes = [.. Enum.GetValues<Outcome>().Select(OutcomeWords.Of)];

    private static readonly HashSet<string> Workings = [.. Enum.GetValues<PaperWorking>().Select(OutcomeWords.Of)];

    private static readonly HashSet<string> Fates = [.. Enum.GetValues<FileFate>().Select(OutcomeWords.Of)];

    private const decimal MostPoints = 1_000_000_000;

    /// <summary>No share of a point is this small; shares of smaller ones overflow.</summary>
    private const decimal LeastPoints = 0.000_000_001m;

    /// <summary>Everything that does not hold, each with its place.</summary>
    public static IEnumerable<string> Broken(GradesDocument grades)
    {
        if (grades.Judge is { Version: < 1 })
            yield return "the judge's version is below 1";
        foreach (var pool in (grades.Judge?.Fresh ?? []).GroupBy(pool => pool.Exercise).Where(same => same.Count() > 1))
            yield return $"the fresh inputs of “{pool.Key}” stand twice";
        if (grades.Deal is { Version: not DealtDocument.CurrentVersion and var version })
            yield return $"the deal on record is of version {version}; expected {DealtDocument.CurrentVersion}";
        foreach (var file in grades.Files.Where(file => !Fates.Contains(file.Fate)))
            yield return $"file “{file.File}”: nothing becomes “{file.Fate}” of a file; expected {string.Join(", ", Fates)}";
        foreach (
            var id in grades
                .Files.Where(file => file.Student is not null && file.Fate == OutcomeWords.Of(FileFate.Graded))
                .GroupBy(file => file.Student)
                .Where(same => same.Count() > 1)
        )
            yield return $"two files of “{id.Key}” were graded";
        foreach (var id in grades.Students.GroupBy(student => student.Id).Where(same => same.Count() > 1))
            yield return $"there are two students “{id.Key}”";
        foreach (var student in grades.Students)
        {
            if (StudentId.Fault(student.Id) is { } fault)
                yield return $"student “{student.Id}”: the id is no student's. {StudentIdWords.Of(fault)}";
            if (!Statuses.Contains(student.Status))
                yield return $"student “{student.Id}”: “{student.Status}” is no status; expected {string.Join(", ", Statuses)}";
            if (
                !ArePoints(student.Points)
                || !ArePoints(student.OutOf)
                || student.Late is { Days: < 1 } or { Off: < 0 or > 1 } or { Minutes: < 0 or > 100_000_000 }
            )
                yield return $"student “{student.Id}”: points or lateness are out of range";
            // Gone through once: they are made for it.
            List<GradesDocument.AnswerEntry> answers = [.. student.Answers];
            if (answers.GroupBy(answer => (answer.Exercise, answer.Part)).Any(same => same.Count() > 1))
                yield return $"student “{student.Id}”: an answer stands twice";
            if (answers.FirstOrDefault(answer => !Outcomes.Contains(answer.Outcome)) is { } strange)
                yield return $"student “{student.Id}”: “{strange.Outcome}” is no outcome; expected {string.Join(", ", Outcomes)}";
            if (answers.FirstOrDefault(answer => answer.Paper is { } paper && !Workings.Contains(paper)) is { } unseen)
                yield return $"student “{student.Id}”: “{unseen.Paper}” says nothing of working on paper; expected {string.Join(" or ", Workings)}";
            if (answers.Any(answer => !ArePoints(answer.Points) || !ArePoints(answer.OutOf)))
                yield return $"student “{student.Id}”: an answer's points are out of range";
        }
    }

    private static bool ArePoints(decimal points) => points is 0 or (>= LeastPoints and <= MostPoints);
}
