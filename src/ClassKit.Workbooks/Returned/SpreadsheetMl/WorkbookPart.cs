using System.Globalization;
using System.Xml;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>What the workbook part says: its sheets in tab order, its names, its calendar.</summary>
internal sealed class WorkbookPart
{
    /// <summary>Names that programs keep for themselves, such as print areas.</summary>
    private const string BuiltInPrefix = "_xlnm.";

    private readonly ReadBudget _budget;
    private readonly List<(string Name, string RelationshipId)> _sheets = [];
    private readonly List<(string Name, string? Sheet, string Formula)> _names = [];

    private WorkbookPart(ReadBudget budget) => _budget = budget;

    /// <summary>Name and relationship of every sheet, of whatever kind, hidden ones included.</summary>
    public IReadOnlyList<(string Name, string RelationshipId)> Sheets => _sheets;

    public DateSystem Dates { get; private set; }

    public bool IteratesCircles { get; private set; }

    /// <summary>The names, those of one sheet with its name. A name whose sheet is not there is left out.</summary>
    public IReadOnlyList<DefinedName> Names =>
        [
            .. _names
                .Select(name => (name.Name, Sheet: SheetOf(name.Sheet), name.Formula))
                .Where(name => name.Sheet is not null)
                .Select(name => new DefinedName(name.Name, name.Sheet!.Length == 0 ? null : name.Sheet, name.Formula)),
        ];

    public static WorkbookPart Read(Package package, string part, ReadBudget budget)
    {
        var workbook = new WorkbookPart(budget);
        XmlPart.TryRead(package, part, xml =>
        {
            while (xml.Next())
                workbook.Take(xml);
        });
        if (workbook._sheets.Count == 0)
            throw RefusalException.Damaged(new Damage.NoSheets(part));
        return workbook;
    }

    private void Take(XmlReader xml)
    {
        if (xml.IsAt("workbookPr"))
            Dates = xml.Flag("date1904") ? DateSystem.From1904 : DateSystem.From1900;
        else if (xml.IsAt("calcPr"))
            IteratesCircles = xml.Flag("iterate");
        else if (xml.IsAt("sheet"))
            TakeSheet(xml);
        else if (xml.IsAt("definedName"))
            TakeName(xml);
    }

    private void TakeSheet(XmlReader xml)
    {
        if (_sheets.Count == _budget.Limits.Sheets)
            throw RefusalException.TooLarge(Excess.Sheets, _budget.Limits.Sheets);
        _sheets.Add((xml.GetAttribute("name") ?? "", xml.RelationshipId() ?? ""));
    }

    private void TakeName(XmlReader xml)
    {
        var (name, sheet) = (xml.GetAttribute("name"), xml.GetAttribute("localSheetId"));
        var formula = xml.ReadText();
        if (name is null || name.StartsWith(BuiltInPrefix, StringComparison.OrdinalIgnoreCase))
            return;
        if (_names.Count == _budget.Limits.Names)
            throw RefusalException.TooLarge(Excess.Names, _budget.Limits.Names);
        _names.Add((name, sheet, _budget.CountFormula(formula)));
    }

    /// <summary>The sheet's name, empty for the whole workbook, null for a sheet that is not there.</summary>
    private string? SheetOf(string? index)
    {
        if (index is null)
            return "";
        return int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < _sheets.Count
            ? _sheets[at].Name
            : null;
    }
}
