using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;

namespace ClassKit.Pages.Report;

/// <summary>A misconception that students of the class met.</summary>
/// <param name="Part">Where.</param>
/// <param name="Misconception">Which.</param>
/// <param name="Students">Who, in roster order.</param>
public sealed record MetMisconception(ReportPart Part, Misconception Misconception, IReadOnlyList<string> Students)
{
    /// <summary>What one of them typed, a formula with its <c>=</c>; null where all of them typed numbers.</summary>
    public string? Example { get; init; }

    /// <summary>All that were met, those with the most students first.</summary>
    public static IReadOnlyList<MetMisconception> Of(IReadOnlyList<ReportPart> parts, ClassGrades grades) =>
    [
        .. parts
            .SelectMany(part => part.Summary.Misconceptions.Select(met => new MetMisconception(part, met.Misconception, Who(grades, part, met.Misconception)) { Example = Formula(grades, part, met.Misconception) }))
            .OrderByDescending(met => met.Students.Count),
    ];

    private static List<string> Who(ClassGrades grades, ReportPart part, Misconception misconception) =>
        [.. grades.Students.Where(student => student.Answers.Any(answer => Took(answer, part, misconception))).Select(student => student.Who.Shown)];

    /// <summary>The shortest that was typed: what is wrong with it is seen soonest.</summary>
    private static string? Formula(ClassGrades grades, ReportPart part, Misconception misconception) => grades.Students.SelectMany(student => student.Answers)
        .Where(answer => Took(answer, part, misconception)).Select(answer => answer.Formula).OfType<string>().MinBy(formula => formula.Length);

    private static bool Took(AnswerGrade answer, ReportPart part, Misconception misconception) =>
        answer.Exercise.Id == part.Summary.Exercise.Id && answer.Part.Id == part.Summary.Part.Id && answer.Misconception?.Id == misconception.Id;
}
