using System.Xml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace ClassKit.Workbooks.Erasing;

/// <summary>Empties rows of a workbook: what was typed there goes, formulas and looks stay, and every other cell is as it was.</summary>
public static class ClearedRows
{
    /// <summary>The workbook with those rows empty.</summary>
    /// <param name="file">The bytes of an .xlsx file.</param>
    /// <param name="rows">Which, counted from 1, by sheet.</param>
    /// <param name="other">A text that cells say, and what they are to say in its place; null to change none.</param>
    /// <returns>Null for a file that cannot be changed so.</returns>
    public static byte[]? In(byte[] file, IReadOnlyDictionary<string, IReadOnlySet<int>> rows, (string Text, string Now)? other = null)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(rows);
        using var stream = new MemoryStream();
        stream.Write(file);
        try
        {
            using (var document = SpreadsheetDocument.Open(stream, isEditable: true))
            {
                if (document.WorkbookPart is not { } book)
                    return null;
                foreach (var sheet in book.Workbook.Descendants<Sheet>().Where(sheet => rows.ContainsKey(sheet.Name?.Value ?? "")))
                {
                    if (sheet.Id?.Value is { } id && book.GetPartById(id) is WorksheetPart part)
                        Empty(part, rows[sheet.Name!.Value!]);
                }
                ForgetTexts(book);
                foreach (var text in other is null ? [] : Texts(book).Where(text => text.Text == other.Value.Text))
                    text.Text = other!.Value.Now;
            }
            return stream.ToArray();
        }
        catch (Exception failure)
            when (failure
                    is OpenXmlPackageException
                        or XmlException
                        or IOException
                        or InvalidDataException
                        or InvalidOperationException
                        or ArgumentException
                        or FormatException
            )
        {
            return null;
        }
    }

    private static void Empty(WorksheetPart part, IReadOnlySet<int> rows)
    {
        var number = 0;
        foreach (var row in part.Worksheet.Descendants<Row>())
        {
            // A row that does not say its number comes after the one before it.
            number = (int?)row.RowIndex?.Value ?? number + 1;
            if (!rows.Contains(number))
                continue;
            foreach (var cell in row.Elements<Cell>())
            {
                cell.CellValue = null;
                cell.InlineString = null;
                if (cell.CellFormula is null)
                    cell.DataType = null;
            }
        }
    }

    private static IEnumerable<Text> Texts(WorkbookPart book) =>
        [
            .. book.SharedStringTablePart?.SharedStringTable?.Descendants<Text>() ?? [],
            .. book.WorksheetParts.SelectMany(part => part.Worksheet.Descendants<Text>()),
        ];

    /// <summary>Texts that no cell shows any more: they lie in a list of their own, where somebody could still read them.</summary>
    private static void ForgetTexts(WorkbookPart book)
    {
        if (book.SharedStringTablePart?.SharedStringTable is not { } table)
            return;
        var shown = book
            .WorksheetParts.SelectMany(part => part.Worksheet.Descendants<Cell>())
            .Where(cell => cell.DataType?.Value == CellValues.SharedString)
            .Select(cell => cell.CellValue?.Text)
            .ToHashSet();
        foreach (var (at, item) in table.Elements<SharedStringItem>().Index())
        {
            if (shown.Contains(at.ToString(System.Globalization.CultureInfo.InvariantCulture)))
                continue;
            item.RemoveAllChildren();
            item.AddChild(new Text(""));
        }
    }
}
