using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.OpenDocument;
using ClassKit.Workbooks.Returned.Packages;
using ClassKit.Workbooks.Returned.SpreadsheetMl;

namespace ClassKit.Workbooks.Returned;

/// <summary>Reads what students hand in: cells, formulas and names of an .xlsx or .ods, or the reason why not.</summary>
/// <remarks>
/// Any bytes may come in, and none make this throw. Only the parts with cells, texts and names are unpacked, as streams
/// within <see cref="ReadLimits"/>; no links are followed, no macros looked at, no pictures opened.
/// </remarks>
public static class ReturnedWorkbookReader
{
    /// <summary>Reads a file from a stream, from where it stands to its end.</summary>
    /// <exception cref="IOException">The stream itself cannot be read.</exception>
    public static WorkbookReading Read(Stream file, ReadLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(file);
        limits ??= ReadLimits.Default;
        using var bytes = new MemoryStream();
        var buffer = new byte[81_920];
        int read;
        while (bytes.Length <= limits.FileBytes && (read = file.Read(buffer)) > 0)
            bytes.Write(buffer, 0, read);
        return Read(bytes.ToArray(), limits);
    }

    /// <summary>Reads a file's bytes.</summary>
    public static WorkbookReading Read(byte[] file, ReadLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(file);
        limits ??= ReadLimits.Default;
        if (file.Length > limits.FileBytes)
            return new(new Refusal.TooLarge(Excess.FileMegabytes, limits.FileBytes / 1024 / 1024));
        if (!FileSignature.IsZip(file))
            return new(FileSignature.Explain(file));
        try
        {
            using var package = Package.Open(file, limits);
            return ReadWorkbook(package, limits);
        }
        catch (RefusalException refused)
        {
            return new(refused.Refusal);
        }
        catch (Exception problem)
            when (problem is IOException or InvalidDataException or NotSupportedException or ArgumentException or OverflowException)
        {
            // What the archive reader throws over inconsistent lengths and offsets.
            return new(new Refusal.Damaged(new Damage.Archive()));
        }
    }

    private static WorkbookReading ReadWorkbook(Package package, ReadLimits limits)
    {
        if (OpenDocumentPart.IsIn(package))
            return new(OpenDocumentPart.Read(package, limits), DocumentPropertiesPart.Read(package, "meta.xml"));
        var root = Relationships.Of(package, "");
        var part = root.FirstOf("officeDocument") ?? "xl/workbook.xml";
        if (OtherPackage.Explain(package, part) is { } refusal)
            throw new RefusalException(refusal);

        var budget = new ReadBudget(limits);
        var workbook = WorkbookPart.Read(package, part, budget);
        var relationships = Relationships.Of(package, part);
        var strings = SharedStrings.Read(package, relationships.FirstOf("sharedStrings"), budget);
        var context = new SheetContext(strings, workbook.Dates, budget);
        var sheets = new List<SheetSnapshot>();
        var tables = new List<TableSnapshot>();
        foreach (var (name, id) in workbook.Sheets)
        {
            // Macro sheets of old workbooks are listed with an empty pointer.
            if (id.Length == 0)
                continue;
            if (relationships.Find(id) is not var (type, sheet))
                throw RefusalException.Damaged(new Damage.NowhereSheet(new(name)));
            if (!package.Has(sheet))
                throw RefusalException.Damaged(new Damage.MissingSheet(new(name), sheet));

            // Sheets that are only a chart or a dialog have no cells.
            if (!Relationships.IsType(type, "worksheet"))
                continue;
            var cells = SheetPart.Read(package, sheet, name, context);
            foreach (var table in Relationships.Of(package, sheet).AllOf("table"))
            {
                if (tables.Count == limits.Tables)
                    throw RefusalException.TooLarge(Excess.Tables, limits.Tables);
                if (TablePart.Read(package, table, name, budget, rows => cells = cells with { FilteredRows = rows }) is { } read)
                    tables.Add(read);
            }

            sheets.Add(cells);
        }

        var snapshot = new WorkbookSnapshot(sheets, workbook.Names, workbook.Dates)
        {
            Tables = tables,
            HasMacros = relationships.FirstOf("vbaProject") is not null,
            IteratesCircles = workbook.IteratesCircles,
        };
        return new(snapshot, DocumentPropertiesPart.Read(package, root.FirstOf("core-properties"), root.FirstOf("extended-properties")));
    }
}
