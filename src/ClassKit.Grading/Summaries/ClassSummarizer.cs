using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;
using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Summaries;

/// <summary>Reads a class's grades together.</summary>
public static class ClassSummarizer
{
    /// <summary>Counts outcomes and misconceptions per part and ranks what to teach again.</summary>
    /// <param name="grades">Of the class.</param>
    /// <param name="fewestAlike">How many students make a group that used one wrong method.</param>
    public static ClassSummary Summarize(ClassGrades grades, int fewestAlike = WrongMethods.Fewest)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var answers = grades.Students.Where(student => student.Status == GradeStatus.Graded).SelectMany(student => student.Answers).ToLookup(answer => (answer.Exercise.Id, answer.Part.Id));
        List<PartSummary> parts =
        [
            .. grades.Dealt.Exercises.SelectMany(exercise => exercise.Parts.Select(part => Summarize(exercise, part, [.. answers[(exercise.Id, part.Id)]]))),
        ];
        return new(parts,
        [
            .. parts.Where(part => part.UnderstoodShare < grades.Dealt.Marking.TeachAgainBelow)
                .OrderBy(part => part.UnderstoodShare),
        ],
        SkillSummarizer.Summarize(grades, parts),
        TestStatistics.Of(grades))
        {
            WrongMethods = WrongMethods.In(grades, fewestAlike),
            FewestAlike = fewestAlike,
        };
    }

    private static PartSummary Summarize(Exercise exercise, Part part, IReadOnlyList<AnswerGrade> answers) => new(
        exercise,
        part,
        Enum.GetValues<Outcome>().ToDictionary(outcome => outcome, outcome => answers.Count(answer => answer.Outcome == outcome)),
        [
            .. answers.Where(answer => answer.Misconception is not null)
                .GroupBy(answer => answer.Misconception!.Id)
                .Select(group => (group.First().Misconception!, group.Count()))
                .OrderByDescending(met => met.Item2).ThenBy(met => met.Item1.Id, StringComparer.Ordinal),
        ]);
}
