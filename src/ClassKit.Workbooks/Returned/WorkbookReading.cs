using System.Diagnostics.CodeAnalysis;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.SpreadsheetMl;

namespace ClassKit.Workbooks.Returned;

/// <summary>What came of reading a returned file: a workbook or a refusal, never both and never neither.</summary>
public sealed class WorkbookReading
{
    internal WorkbookReading(WorkbookSnapshot workbook, DocumentProperties properties) => (Workbook, Properties) = (workbook, properties);

    internal WorkbookReading(Refusal refusal) => Refusal = refusal;

    /// <summary>The workbook; null if the file was refused.</summary>
    public WorkbookSnapshot? Workbook { get; }

    /// <summary>Why the file was refused; null if it was read.</summary>
    public Refusal? Refusal { get; }

    /// <summary>What the workbook says of itself as a document; nothing for a file that was refused.</summary>
    public DocumentProperties Properties { get; } = DocumentProperties.None;

    /// <summary>Gives whichever there is.</summary>
    /// <returns>True for a workbook.</returns>
    public bool TryGet([NotNullWhen(true)] out WorkbookSnapshot? workbook, [NotNullWhen(false)] out Refusal? refusal)
    {
        (workbook, refusal) = (Workbook, Refusal);
        return workbook is not null;
    }
}
