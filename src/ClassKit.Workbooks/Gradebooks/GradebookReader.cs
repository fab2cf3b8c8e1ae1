using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;
using ClassKit.Workbooks.Tables;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>
/// Finds what an instructor typed over the points of a gradebook, whichever program saved it and however its rows were sorted.
/// </summary>
/// <remarks>
/// Rows are found by the student's id and columns by the part's tag, as <see cref="GradebookGrid"/> lays them out. What was graded is taken
/// from the same workbook's sheet of answers, so that a gradebook set aside long ago still says what was typed into it.
/// </remarks>
public static class GradebookReader
{
    /// <summary>Reads a gradebook.</summary>
    /// <param name="file">Its bytes, which may be anything.</param>
    /// <param name="dealt">What was dealt to whom.</param>
    public static GradebookReading Read(byte[] file, DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(dealt);
        var grid = new GradebookGrid(dealt, dealt.Students.Count);
        var reading = ReturnedWorkbookReader.Read(file, Limits(dealt.Students.Count * grid.Answers.Count));
        if (reading.Workbook is not { } workbook)
            return new([], new GradebookFault.Refused(reading.Refusal!));
        if (Table(workbook, GradebookGrid.PointsSheet, [GradebookGrid.IdHead]) is not { } points)
            return new([], new GradebookFault.NoPoints(GradebookGrid.PointsSheet, GradebookGrid.IdHead));
        if (Table(workbook, AnswersSheet.Name, [GradebookGrid.IdHead, AnswersSheet.PartHead, AnswersSheet.PointsHead]) is not { } answers)
            return new([], new GradebookFault.NoAnswers(AnswersSheet.Name));
        return new([.. Typed(points, Graded(answers), dealt, grid)], null);
    }

    /// <summary>A class's own gradebook grows with the class.</summary>
    private static ReadLimits Limits(int answers)
    {
        var usual = ReadLimits.Default;
        const int cells = 16;
        const int characters = 1_000;
        return usual with
        {
            Cells = usual.Cells + (answers * cells),
            SharedTexts = usual.SharedTexts + (answers * cells),
            AllTextLength = usual.AllTextLength + ((long)answers * characters),
            AllFormulasLength = usual.AllFormulasLength + ((long)answers * characters),
            UnpackedBytes = usual.UnpackedBytes + ((long)answers * characters * cells),
        };
    }

    private static Dictionary<(string Student, string Tag), CellValue> Graded(FoundTable answers) =>
        answers
            .Rows.Select(row =>
                (
                    Student: answers.Text(row, GradebookGrid.IdHead),
                    Tag: answers.Text(row, AnswersSheet.PartHead),
                    Points: answers.Value(row, AnswersSheet.PointsHead)
                )
            )
            .DistinctBy(row => (row.Student, row.Tag))
            .ToDictionary(row => (row.Student, row.Tag), row => row.Points);

    private static IEnumerable<TypedPoints> Typed(
        FoundTable points,
        Dictionary<(string Student, string Tag), CellValue> graded,
        DealtClass dealt,
        GradebookGrid grid
    )
    {
        var seats = dealt.Students.ToDictionary(seat => seat.Who.Id);
        var places = grid
            .Exercises.SelectMany(exercise => exercise.Answers.Select(answer => (Exercise: exercise.Exercise.Id, answer.Part, answer.Tag)))
            .ToList();
        foreach (var row in points.Rows)
        {
            if (!seats.Remove(points.Text(row, GradebookGrid.IdHead), out var seat))
                continue;
            foreach (var (exercise, part, tag) in places.Where(place => points.Has(place.Tag)))
            {
                var now = points.Value(row, tag);
                var before = graded.GetValueOrDefault((seat.Who.Id, tag));
                if (IsAsGraded(now, before))
                    continue;
                (decimal? Value, TypedPointsFault? Fault) read =
                    OtherName(points, row, seat.Who) is { } other ? (null, new TypedPointsFault.OtherName(other))
                    : seat.Has(exercise) ? Points(now, part)
                    : (null, new TypedPointsFault.NotDealt());
                yield return new(
                    points.Cell(row, tag),
                    seat.Who,
                    exercise,
                    part.Id,
                    before.IsNumber ? (decimal)before.Number : null,
                    now.ToString(),
                    read.Value
                )
                {
                    Fault = read.Fault,
                };
            }
        }
    }

    /// <summary>The name in a row where it is surely not its student's: a list was numbered anew, or a row was put together of two.</summary>
    private static string? OtherName(FoundTable points, int row, Student who) =>
        points.Has(GradebookGrid.NameHead)
        && points.Text(row, GradebookGrid.NameHead) is { Length: > 0 } called
        && !SamePerson.IsSurely(new(who.Id, called), who)
        && !SamePerson.IsSurely(new(who.Id, called), who with { Name = who.Shown })
            ? called
            : null;

    /// <summary>Programs store numbers anew: only more than their noise is a change.</summary>
    private static bool IsAsGraded(CellValue now, CellValue before)
    {
        const double noise = 1e-9;
        if (now.IsNumber && before.IsNumber)
            return Math.Abs(now.Number - before.Number) < noise;
        return Shown(now) == Shown(before);

        static string Shown(CellValue value) => value.IsNumber ? value.ToString() : value.ToString().Trim();
    }

    private static (decimal? Points, TypedPointsFault? Fault) Points(CellValue typed, Part part)
    {
        // Where the comma is the decimal sign, a text may still say half a point as 0,5.
        var isNumber = decimal.TryParse(
            typed.IsNumber ? typed.Number.ToString("0.#########", CultureInfo.InvariantCulture) : typed.ToString().Trim().Replace(',', '.'),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var points
        );
        return isNumber && points <= part.Points ? (points, null) : (null, new TypedPointsFault.OutOfRange(part.Points));
    }

    /// <summary>
    /// A table by the words of its head, on the sheet of a name or, if that was renamed, on the first sheet that has such a table.
    /// </summary>
    private static FoundTable? Table(WorkbookSnapshot workbook, string name, IReadOnlyList<string> heads) =>
        workbook
            .Sheets.OrderBy(sheet => sheet.Name == name ? 0 : 1)
            .Select(sheet => FoundTable.In(sheet, heads))
            .FirstOrDefault(table => table is not null);
}
