using ClassKit.Exercises.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.OnPaper;
using ClassKit.Workbooks.Returned;

namespace ClassKit.DemoCohort;

/// <summary>
/// The instructor's workbook with the answers of those who worked on paper: their numbers, and ticks where the working shows the method.
/// </summary>
public static class PaperAnswers
{
    private const string Tick = "✓";

    /// <summary>The workbook filled in; every other part was worked out on the sheet, so that its working can be seen.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="students">The ids of those who worked on paper.</param>
    public static byte[] Of(DealtClass dealt, IReadOnlyList<string> students)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(students);
        var empty = PaperWriter.Write(dealt);
        var sheet = ReturnedWorkbookReader.Read(empty).Workbook!.Sheets.Single();
        int Row(string id) => sheet.Cells.Single(cell => cell.Value.Stored.ToString() == id).Key.Row;
        int? Column(string head) =>
            sheet.Cells.Where(cell => cell.Value.Stored.ToString() == head).Select(cell => (int?)cell.Key.Column).SingleOrDefault();
        var layout = dealt.LayOut();
        List<WorkbookEdit> edits = [];
        foreach (var seat in dealt.Students.Where(seat => students.Contains(seat.Who.Id)))
        {
            foreach (var (at, answer) in layout.AnswersOf(seat).Index())
            {
                // One of them took the wrong turn of adding in the last part; who worked on paper rounds as people do.
                var number = Math.Round(answer.Expected, answer.Expected < 1 ? 3 : 1) + (seat.Who.Id == students[0] && at == 1 ? 5 : 0);
                edits.Add(new EnterNumber(new(sheet.Name, Row(seat.Who.Id), Column(answer.Tag)!.Value), number));
                if (at % 2 == 0 && Column($"{answer.Tag} {Tick}") is { } tick)
                    edits.Add(new EnterText(new(sheet.Name, Row(seat.Who.Id), tick), Tick));
            }
        }
        return WorkbookFiller.Fill(empty, edits);
    }
}
