using ClassKit.Grading.Results;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// grades.csv: a row a student, points in all and per part, none where the instructor has yet to decide, for any program that takes a
/// table. Where anybody worked on paper, a last column says who.
/// </summary>
public static class GradesCsv
{
    /// <summary>The file's text.</summary>
    public static string Write(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var parts = grades
            .Dealt.Exercises.SelectMany(exercise => exercise.Parts.Select(part => (Exercise: exercise.Id, Part: part.Id)))
            .ToList();
        var onPaper = grades.Students.Any(student => student.IsFromPaper);
        return CsvText.Of([
            [
                "id",
                "name",
                "status",
                "points",
                "out of",
                .. parts.Select(part => $"{part.Exercise}.{part.Part}"),
                "file",
                .. OnPaper(onPaper, "on paper"),
            ],
            .. grades.Students.Select(student => Row(student, parts).Concat(OnPaper(onPaper, student.IsFromPaper ? "yes" : ""))),
        ]);
    }

    private static string[] OnPaper(bool anybody, string cell) => anybody ? [cell] : [];

    private static List<string> Row(StudentGrade student, IReadOnlyList<(string Exercise, string Part)> parts)
    {
        var points = student.Answers.ToDictionary(
            answer => (answer.Exercise.Id, answer.Part.Id),
            answer => answer.IsUndecided ? "" : CsvText.Points(answer.Points)
        );
        return
        [
            student.Who.Id,
            student.Who.Name,
            OutcomeWords.Of(student.Status),
            CsvText.Points(student.Points),
            CsvText.Points(student.OutOf),
            .. parts.Select(part => points.GetValueOrDefault(part, "")),
            student.File ?? "",
        ];
    }
}
