using System.Globalization;
using ClassKit.Grading;
using CsvHelper;
using CsvHelper.Configuration;

namespace ClassKit.UseCases;

/// <summary>grades.csv: a row a student, points in all and per part, for any program that takes a table.</summary>
/// <remarks>RFC 4180. A cell that a spreadsheet could take for a formula gets an apostrophe before it, since names come from outside.</remarks>
public static class GradesCsv
{
    /// <summary>The file's text.</summary>
    public static string Write(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            NewLine = "\r\n",
            InjectionOptions = InjectionOptions.Escape,
        }))
        {
            var parts = grades.Dealt.Exercises.SelectMany(exercise => exercise.Parts.Select(part => (Exercise: exercise.Id, Part: part.Id))).ToList();
            WriteRow(csv, ["id", "name", "status", "points", "out of", .. parts.Select(part => $"{part.Exercise}.{part.Part}"), "file"]);
            foreach (var student in grades.Students)
            {
                var points = student.Answers.ToDictionary(answer => (answer.Exercise.Id, answer.Part.Id), answer => Number(answer.Points));
                WriteRow(csv,
                [
                    student.Student.Student.Id, student.Student.Student.Name, OutcomeWords.Of(student.Status),
                    Number(student.Points), Number(student.OutOf), .. parts.Select(part => points.GetValueOrDefault(part, "")), student.File ?? "",
                ]);
            }
        }
        return text.ToString();
    }

    private static string Number(double points) => points.ToString("0.##", CultureInfo.InvariantCulture);

    private static void WriteRow(CsvWriter csv, IEnumerable<string> cells)
    {
        foreach (var cell in cells) csv.WriteField(cell);
        csv.NextRecord();
    }
}
