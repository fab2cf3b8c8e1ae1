using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Changes to the workbook that the corpus is made from: its first exercise's sheet, its texts, its names.</summary>
internal static class Sheets
{
    public const string Sheet = "xl/worksheets/sheet2.xml";
    public const string Workbook = "xl/workbook.xml";

    public static Parts Parts { get; } = Parts.Of(Corpus.Workbook);

    /// <summary>The sheet's name, as formulas write it.</summary>
    public static string Name { get; } = SmallClass.AdasAnswers[0].Address.Sheet;

    /// <summary>The answer cells of the first exercise.</summary>
    public static IReadOnlyList<string> AnswerCells { get; } =
    [.. SmallClass.AdasAnswers.Where(answer => answer.Address.Sheet == Name).Select(answer => answer.Address.Cell)];

    /// <summary>The workbook with rows put behind those of the first exercise.</summary>
    public static byte[] WithRows(string rows) => Parts.Replace(Sheet, "</sheetData>", rows + "</sheetData>").Pack();

    /// <summary>The workbook with elements put behind the cells of the first exercise.</summary>
    public static byte[] Behind(string elements) => Parts.Replace(Sheet, "</sheetData>", "</sheetData>" + elements).Pack();

    /// <summary>The workbook with every answer of the first exercise replaced by a formula, and with rows for it to work on.</summary>
    public static byte[] Answered(string formula, string rows = "") => AnsweredParts(formula, rows).Pack();

    public static Parts AnsweredParts(string formula, string rows = "") =>
        Parts.Change(Sheet, xml =>
            AnswerCells
                .Aggregate(xml, (text, cell) => CellXml.Put(text, cell, $"><f>{System.Security.SecurityElement.Escape(formula)}</f>"))
                .Replace("</sheetData>", rows + "</sheetData>", StringComparison.Ordinal)
        );

    /// <summary>Rows of cells, far below the exercise.</summary>
    public static string Rows(int rows, int columns, Func<int, int, string> cell, int first = 1000) =>
        string.Concat(
            Enumerable
                .Range(first, rows)
                .Select(row =>
                    $"<row r=\"{row}\">"
                    + string.Concat(
                        Enumerable
                            .Range(1, columns)
                            .Select(column =>
                                $"<c r=\"{CellFormulas.Sheets.CellAddress.ColumnLetters(column)}{row}\"{cell(row, column)}</c>"
                            )
                    )
                    + "</row>"
                )
        );
}
