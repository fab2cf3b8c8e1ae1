using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Wording.Cohorts;

namespace ClassKit.Content.Classes;

/// <summary>Reads an instructor's corrections: comma-separated values with the header <c>student,part,points,reason</c>.</summary>
/// <remarks>
/// A student is named by id or by full name, a part as the columns of grades.csv name it, or by its number and letter on every page: 2c.
/// Points are what the answer is to have, not a difference: spreadsheets drop the sign of “+1” when they save.
/// </remarks>
public static class CorrectionsReader
{
    /// <summary>The file's usual name.</summary>
    public const string FileName = "corrections.csv";

    internal static readonly string[] Columns = ["student", "part", "points", "reason"];

    /// <summary>The corrections in file order, or everything that is wrong with the file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="dealt">What was dealt to whom.</param>
    public static Reading<IReadOnlyList<Correction>> Read(Source source, DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(dealt);
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<IReadOnlyList<Correction>>();

        List<Correction> corrections = [.. Lines(text, dealt, problems).Select(line => line.Correction)];
        return problems.Finish<IReadOnlyList<Correction>>(() => corrections);
    }

    /// <summary>The corrections of a table, each with the line in which it begins; what is wrong with others is noted.</summary>
    internal static IReadOnlyList<(int Line, Correction Correction)> Lines(string text, DealtClass dealt, ProblemList problems)
    {
        List<(int, Correction)> corrections = [];
        var lines = new Dictionary<(string, string, string), int>();
        foreach (var row in CsvTable.Read(text, Columns, Columns.Length, problems).Rows)
        {
            var student = Student(row, dealt, problems);
            var (exercise, part) = Asked(row, dealt, problems);
            var points = Points(row, part, problems);
            var reason = row["reason"];
            if (reason.Length == 0)
                problems.Add(row.Line, "The correction gives no reason", "Write one: the student reads it in the feedback.");
            if (student is not null && exercise is not null && !IsAsked(student, exercise, dealt))
                problems.Add(row.Line, $"`{row["student"]}` was not dealt {exercise}", "Correct a part that this student was asked.");
            if (student is null || exercise is null || part is null || points is null || reason.Length == 0)
                continue;
            if (lines.TryAdd((student, exercise, part.Id), row.Line))
                corrections.Add((row.Line, new(student, exercise, part.Id, points.Value, reason)));
            else
                problems.Add(
                    row.Line,
                    $"The same answer is corrected in line {lines[(student, exercise, part.Id)]} already",
                    "Keep the line that counts."
                );
        }
        return corrections;
    }

    private static bool IsAsked(string student, string exercise, DealtClass dealt) =>
        dealt.Students.First(seat => seat.Who.Id == student).Has(exercise);

    private static string? Student(CsvRow row, DealtClass dealt, ProblemList problems)
    {
        var named = row["student"];
        var students = dealt.Students.Select(seat => seat.Who).ToList();
        if (students.Find(student => student.Id == named) is { } byId)
            return byId.Id;
        switch (
            students.FindAll(student =>
                student.Shown.Equals(named, StringComparison.OrdinalIgnoreCase)
                || student.Name.Equals(named, StringComparison.OrdinalIgnoreCase)
            )
        )
        {
            case [var one]:
                return one.Id;
            case []:
                problems.Add(
                    row.Line,
                    $"Nobody in {ClassName.InSentence(dealt.Cohort)} is called `{named}`",
                    NearestWord.To(named, students.SelectMany(student => new[] { student.Id, student.Shown })) is { } nearest
                        ? $"Did you mean `{nearest}`?"
                        : "Name a student by the id or the name in grades.csv."
                );
                return null;
            default:
                problems.Add(row.Line, $"Several students are called `{named}`", "Name the one you mean by the id in grades.csv.");
                return null;
        }
    }

    private static (string? Exercise, Part? Part) Asked(CsvRow row, DealtClass dealt, ProblemList problems)
    {
        var named = row["part"];
        foreach (var (at, exercise) in dealt.Exercises.Index())
        {
            foreach (var (place, part) in exercise.Parts.Index())
            {
                if (
                    named == $"{exercise.Id}.{part.Id}"
                    || named.Equals($"{at + 1}{CellAddress.ColumnLetters(place + 1)}", StringComparison.OrdinalIgnoreCase)
                )
                    return (exercise.Id, part);
            }
        }
        var known = dealt.Exercises.SelectMany(exercise => exercise.Parts.Select(part => $"{exercise.Id}.{part.Id}")).ToList();
        problems.Add(
            row.Line,
            named.Length == 0 ? "The correction names no part" : $"There is no part `{named}`",
            NearestWord.Advice(named, known)
        );
        return (null, null);
    }

    private static decimal? Points(CsvRow row, Part? part, ProblemList problems)
    {
        // Where the comma is the decimal sign, spreadsheets write half a point as 0,5.
        var isNumber = decimal.TryParse(
            row["points"].Replace(',', '.'),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var points
        );
        if (isNumber && (part is null || points <= part.Points))
            return points;
        var most = part is null ? "what the part is worth" : part.Points.ToString("0.##", CultureInfo.InvariantCulture);
        problems.Add(row.Line, $"The points are `{row["points"]}`", $"Write the points that the answer is to have, from 0 to {most}.");
        return null;
    }
}
