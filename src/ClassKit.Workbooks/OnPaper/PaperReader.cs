using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.OnPaper;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tables;

namespace ClassKit.Workbooks.OnPaper;

/// <summary>
/// Finds what was typed into a workbook of answers on paper, whichever program saved it and however its rows were sorted.
/// </summary>
public static class PaperReader
{
    // A cross is no tick: many teachers mark with it what is wrong.
    private static readonly string[] Ticks = [PaperGrid.Tick, "✔", "☑", "y", "yes", "true", "1"];
    private static readonly string[] NoTicks = ["", "-", "–", "n", "no", "false", "0"];

    /// <summary>Reads such a workbook.</summary>
    /// <param name="file">Its bytes, which may be anything.</param>
    /// <param name="name">How places in it are called.</param>
    /// <param name="digest">The SHA-256 of its bytes in lower-case hexadecimal.</param>
    /// <param name="dealt">What was dealt to whom.</param>
    public static PaperReading Read(byte[] file, string name, string digest, DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(dealt);
        var reading = ReturnedWorkbookReader.Read(file);
        if (reading.Workbook is not { } workbook)
            return Refused(new PaperRefusal.Unreadable(reading.Refusal!));
        if (dealt.Identity?.Code is { } wanted && Codes(workbook) is { Count: > 0 } codes && !codes.Contains(wanted))
            return Refused(new PaperRefusal.OtherDeal(codes, wanted));
        var grid = new PaperGrid(dealt);
        var table = workbook
            .Sheets.OrderBy(sheet => sheet.Name == PaperGrid.Sheet ? 0 : 1)
            .Select(sheet => FoundTable.In(sheet, [PaperGrid.IdHead, PaperGrid.NameHead]))
            .FirstOrDefault(found => found is not null && grid.Columns.Any(column => found.Has(column.Answer.Tag)));
        return table is null ? Refused(new PaperRefusal.NoTable(PaperGrid.IdHead)) : Read(table, grid, dealt, name, digest);
    }

    private static PaperReading Refused(PaperRefusal why) => PaperReading.Nothing with { Refusal = why };

    private static List<string> Codes(WorkbookSnapshot workbook) =>
        [
            .. workbook
                .Sheets.SelectMany(sheet => sheet.Cells)
                .OrderBy(cell => cell.Key.Row)
                .Where(cell => cell.Key.Row <= PaperGrid.DealRow && cell.Value.Stored.IsText)
                .Select(cell => DealCode.TryFind(cell.Value.Stored.Text, out var code) ? code : null)
                .OfType<string>()
                .Distinct(),
        ];

    private static PaperReading Read(FoundTable table, PaperGrid grid, DealtClass dealt, string name, string digest)
    {
        var seats = dealt.Students.ToDictionary(seat => seat.Who.Id);
        var columns = grid.Columns.Where(column => table.Has(column.Answer.Tag)).ToList();
        List<PaperWork> work = [];
        List<PaperFault> faults = [];
        HashSet<string> seen = [];
        foreach (var row in table.Rows)
        {
            var cells = columns
                .Select(column => (Column: column, Written: Written(table, row, column), Tick: Tick(table, row, column)))
                .Where(cell => !cell.Written.IsBlank || cell.Tick.Length > 0)
                .ToList();
            if (cells.Count == 0)
                continue;
            var id = table.Text(row, PaperGrid.IdHead);
            if (!seats.TryGetValue(id, out var seat))
                faults.Add(new PaperFault.UnknownStudent(table.Cell(row, PaperGrid.IdHead), new Quotation(id)));
            else if (
                table.Text(row, PaperGrid.NameHead) is { Length: > 0 } called
                && !SamePerson.IsSurely(new(id, called), seat.Who)
                && !SamePerson.IsSurely(new(id, called), seat.Who with { Name = seat.Who.Shown })
            )
                faults.Add(new PaperFault.OtherName(table.Cell(row, PaperGrid.NameHead), seat.Who, new Quotation(called)));
            else if (!seen.Add(id))
                faults.Add(new PaperFault.SecondRow(table.Cell(row, PaperGrid.IdHead), seat.Who));
            else
            {
                List<PaperAnswer> answers = [];
                foreach (var (column, written, tick) in cells)
                {
                    if (!seat.Has(column.Exercise.Exercise.Id))
                    {
                        faults.Add(new PaperFault.NotDealt(table.Cell(row, column.Answer.Tag), seat.Who, column.Answer.Tag));
                        continue;
                    }
                    var isTicked = Ticks.Contains(tick, StringComparer.OrdinalIgnoreCase);
                    if (!isTicked && !NoTicks.Contains(tick, StringComparer.OrdinalIgnoreCase))
                        faults.Add(
                            new PaperFault.NoTick(
                                table.Cell(row, PaperGrid.TickHead(column.Answer)),
                                seat.Who,
                                column.Answer.Tag,
                                new Quotation(tick)
                            )
                        );
                    answers.Add(new(column.Exercise.Exercise.Id, column.Answer.Part.Id, written, isTicked));
                }
                if (answers.Count > 0)
                    work.Add(new(seat, FormattableString.Invariant($"{name} row {row}"), answers) { Digest = digest });
            }
        }
        return new(work, faults);
    }

    /// <summary>A number, a letter or words; what a formula came to, where the instructor let the cell work it out.</summary>
    private static CellValue Written(FoundTable table, int row, PaperColumn column) =>
        table.Value(row, column.Answer.Tag) is { IsText: true } text && text.Text.Trim().Length == 0
            ? CellValue.Blank
            : table.Value(row, column.Answer.Tag);

    private static string Tick(FoundTable table, int row, PaperColumn column) =>
        column.TickColumn is not null && table.Has(PaperGrid.TickHead(column.Answer))
            ? table.Text(row, PaperGrid.TickHead(column.Answer))
            : "";
}
