using ClassKit.Grading.Results;
using ClassKit.Records.Gradings;
using ClassKit.Terms.Difficulty;

namespace ClassKit.UseCases.Difficulty;

/// <summary>
/// Works of earlier classes as difficulty is estimated from them. What nobody could judge, and nobody put right by hand, says nothing; a
/// part that is worth nothing neither.
/// </summary>
public static class PastWorks
{
    /// <summary>Of grades.</summary>
    public static IEnumerable<PastWork> Of(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        return grades
            .Students.Select(student => new PastWork(
                grades.Dealt.Cohort,
                DealOf(grades),
                [
                    .. student
                        .Answers.Where(answer => Counts(answer.Outcome, answer.OutOf, answer.Correction is not null))
                        .Select(answer => new PastAnswer(
                            new(answer.Exercise.Id, answer.Part.Id),
                            answer.Points,
                            answer.OutOf,
                            answer.Misconception?.Id,
                            answer.NearMiss?.Formula
                        )),
                ]
            ))
            .Where(work => work.Answers.Count > 0);
    }

    /// <summary>Of what is on record.</summary>
    public static IEnumerable<PastWork> Of(IEnumerable<PastAnswerRow> rows) =>
        rows.Where(row => Counts(OutcomeWords.Find(row.Answer.Outcome), row.Answer.OutOf, row.Answer.Correction is not null))
            .GroupBy(row => (row.Class, row.Deal, row.Work))
            .Select(work => new PastWork(
                work.Key.Class,
                work.Key.Deal,
                [
                    .. work.Select(row => new PastAnswer(
                        new(row.Exercise, row.Part),
                        row.Answer.Points,
                        row.Answer.OutOf,
                        row.Answer.Misconception,
                        row.Answer.NearMiss
                    )),
                ]
            ));

    /// <summary>The code of a deal; of one from before there were codes its title.</summary>
    internal static string DealOf(ClassGrades grades) => grades.Dealt.Identity?.Code ?? grades.Dealt.LessonTitle;

    private static bool Counts(Outcome outcome, decimal outOf, bool isCorrected) =>
        outOf > 0 && (outcome != Outcome.Unsupported || isCorrected);
}
