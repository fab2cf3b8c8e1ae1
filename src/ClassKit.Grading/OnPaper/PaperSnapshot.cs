using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Layout;

namespace ClassKit.Grading.OnPaper;

/// <summary>
/// The workbook that a student would have returned who typed what they wrote on paper, so that both are judged in one way.
/// </summary>
internal static class PaperSnapshot
{
    public static WorkbookSnapshot Of(PaperWork work, PracticeLayout layout)
    {
        var written = work.Answers.ToDictionary(answer => (answer.Exercise, answer.Part), answer => answer.Written);
        var sheets = new Dictionary<string, Dictionary<(int Row, int Column), CellContent>>();
        foreach (var exercise in layout.Exercises.Where(exercise => work.Student.Has(exercise.Exercise.Id)))
        {
            var givens = work.Student.GivensOf(exercise.Exercise.Id);
            foreach (var given in exercise.Givens)
                Put(given.Address, CellValue.FromNumber((double)givens[given.Given.Id]));
            foreach (var answer in exercise.Answers)
                Put(answer.Address, written.GetValueOrDefault((exercise.Exercise.Id, answer.Part.Id)));
        }
        return new([.. sheets.Select(sheet => new SheetSnapshot(sheet.Key, sheet.Value))], []);

        void Put(CellAddress cell, CellValue value)
        {
            if (!sheets.TryGetValue(cell.Sheet, out var cells))
                sheets[cell.Sheet] = cells = [];
            if (!value.IsBlank)
                cells[(cell.Row, cell.Column)] = new(value);
        }
    }
}
