using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tables;

namespace ClassKit.Workbooks.Bench;

/// <summary>
/// Reads a workbook of bench marks into the fields of its form, whichever program saved it and however its rows were sorted.
/// </summary>
public static class BenchMarksReader
{
    /// <summary>What was typed in.</summary>
    /// <param name="file">Its bytes, which may be anything.</param>
    /// <param name="form">The form that it must be of.</param>
    public static BenchBookReading Read(byte[] file, BenchForm form)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(form);
        var reading = ReturnedWorkbookReader.Read(file);
        if (reading.Workbook is not { } workbook)
            return new(null, []) { Refusal = reading.Refusal };
        var sheet = workbook
            .Sheets.OrderBy(one => one.Name == BenchGrid.Sheet ? 0 : 1)
            .FirstOrDefault(one => FoundTable.In(one, [BenchGrid.IdHead, BenchGrid.TeamHead]) is not null);
        if (sheet is null || FoundTable.In(sheet, [BenchGrid.IdHead, BenchGrid.TeamHead]) is not { } table)
            return new(null, []);
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        Put(fields, BenchForm.Marker, Beside(sheet, BenchGrid.MarkerHead));
        var students = form.Students.ToDictionary(student => student.Id);
        var teams = Enumerable.Range(1, form.Teams).ToDictionary(BenchGrid.IdOf);
        List<string> strangers = [];
        List<Student> listed = [];
        foreach (var row in table.Rows)
        {
            var id = table.Text(row, BenchGrid.IdHead);
            if (id.Length > 0 && !BenchGrid.IsTeam(id))
                listed.Add(
                    new(id, Text(table, row, BenchGrid.WhoHead))
                    {
                        Team =
                            table.Text(row, BenchGrid.TeamHead) is { Length: > 0 } team
                            && !team.Equals(BenchForm.Away, StringComparison.OrdinalIgnoreCase)
                                ? team
                                : null,
                    }
                );
            if (teams.TryGetValue(id, out var number))
            {
                foreach (var (at, criterion) in form.Scale.Criteria.Index())
                    Put(fields, BenchForm.OfTeam(number, at), Text(table, row, criterion.Name));
                Put(fields, BenchForm.CommentOfTeam(number), Text(table, row, BenchGrid.CommentHead));
            }
            else if (students.TryGetValue(id, out var student))
            {
                Put(fields, BenchForm.TeamOfStudent(student), Text(table, row, BenchGrid.TeamHead));
                foreach (var (at, criterion) in form.Scale.Criteria.Index())
                    Put(fields, BenchForm.OfStudent(student, at), Text(table, row, criterion.Name));
                Put(fields, BenchForm.CommentOfStudent(student), Text(table, row, BenchGrid.CommentHead));
            }
            else if (id.Length > 0)
                strangers.Add(id);
        }
        return new(Beside(sheet, BenchGrid.FormHead), strangers) { Fields = fields, Listed = listed };
    }

    private static void Put(Dictionary<string, string> fields, string name, string text)
    {
        if (text.Length > 0)
            fields[name] = text;
    }

    private static string Text(FoundTable table, int row, string head) => table.Has(head) ? table.Text(row, head) : "";

    private static string Beside(SheetSnapshot sheet, string head) =>
        sheet
            .Cells.Where(cell => cell.Value.Stored.ToString().Trim() == head)
            .OrderBy(cell => cell.Key.Row)
            .Select(cell => sheet.Cells.GetValueOrDefault((cell.Key.Row, cell.Key.Column + 1))?.Stored.ToString().Trim())
            .FirstOrDefault()
        ?? "";
}
