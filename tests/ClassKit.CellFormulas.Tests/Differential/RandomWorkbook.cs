using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>
/// A workbook of random formulas over random cells: ordinary ones in column H, array formulas in I, ranges where one value is wanted in J.
/// </summary>
internal static class RandomWorkbook
{
    public const int FormulasEach = 200;
    public const int ArraysEach = 12;

    public static WorkbookSnapshot Of(int seed, int sheets) =>
        new([.. Enumerable.Range(0, sheets).Select(number => Sheet($"Sheet{number + 1}", seed + number))], []);

    private static SheetSnapshot Sheet(string name, int seed)
    {
        var random = new RandomFormulas(seed);
        var cells = new Dictionary<(int Row, int Column), CellContent>();
        random.Fill(cells);
        for (var row = 1; row <= FormulasEach; row++)
            cells[(row, 8)] = new(CellValue.Blank, FileText(random.Next(1 + row % 4)));
        for (var row = 1; row <= ArraysEach; row++)
            cells[(row, 9)] = new(CellValue.Blank, FileText(random.NextArray()), $"I{row}");
        for (var row = 1; row <= ArraysEach; row++)
            cells[(row, 10)] = new(CellValue.Blank, FileText(random.NextIntersection()));
        return new(name, cells);
    }

    private static string FileText(string formula) => CellFormula.Of(formula).ToFileText();
}
