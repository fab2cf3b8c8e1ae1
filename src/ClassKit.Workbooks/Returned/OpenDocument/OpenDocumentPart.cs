using System.Xml;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.OpenDocument;

/// <summary>Reads an OpenDocument spreadsheet (.ods) into the same snapshot as an .xlsx.</summary>
internal sealed class OpenDocumentPart
{
    private const string Content = "content.xml";
    private const string MediaType = "application/vnd.oasis.opendocument.spreadsheet";

    private readonly ReadLimits _limits;
    private readonly ReadBudget _budget;
    private readonly List<SheetSnapshot> _sheets = [];
    private readonly List<DefinedName> _names = [];
    private OpenDocumentTable? _table;
    private DateSystem _dates = DateSystem.From1899;

    private OpenDocumentPart(ReadLimits limits)
    {
        _limits = limits;
        _budget = new(limits);
    }

    /// <summary>True for a package that says it is such a spreadsheet.</summary>
    public static bool IsIn(Package package)
    {
        using var stream = package.Has(Content) ? package.TryOpen("mimetype") : null;
        if (stream is null)
            return false;
        using var reader = new StreamReader(stream);
        var text = new char[MediaType.Length];
        return reader.ReadBlock(text) == text.Length && text.AsSpan().SequenceEqual(MediaType);
    }

    public static WorkbookSnapshot Read(Package package, ReadLimits limits)
    {
        RefuseEncrypted(package);
        var part = new OpenDocumentPart(limits);
        XmlPart.TryRead(package, Content, xml =>
        {
            while (xml.Next())
                part.Take(xml);
        });
        if (part._sheets.Count == 0)
            throw RefusalException.Damaged(new Damage.NoSheets(Content));
        return new(part._sheets, part._names, part._dates);
    }

    private static void RefuseEncrypted(Package package) => XmlPart.TryRead(package, "META-INF/manifest.xml", xml =>
        {
            while (xml.Next())
            {
                if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "encryption-data")
                    throw new RefusalException(new Refusal.PasswordProtected());
            }
        });

    private void Take(XmlReader xml)
    {
        if (xml.IsAt(OpenDocumentXml.Table, "null-date"))
            _dates = xml.GetAttribute("date-value", OpenDocumentXml.Table) == "1904-01-01" ? DateSystem.From1904 : DateSystem.From1899;
        else if (xml.IsAt(OpenDocumentXml.Table, "table"))
            Begin(xml);
        else if (_table is not null && xml.IsAt(OpenDocumentXml.Table, "table-row"))
            _table.BeginRow(xml);
        else if (
            _table is not null
            && (xml.IsAt(OpenDocumentXml.Table, "table-cell") || xml.IsAt(OpenDocumentXml.Table, "covered-table-cell"))
        )
            _table.TakeCell(xml);
        else if (xml.IsAt(OpenDocumentXml.Table, "named-range"))
            Name(xml, "cell-range-address");
        else if (xml.IsAt(OpenDocumentXml.Table, "named-expression"))
            Name(xml, "expression");
        else if (xml.NodeType == XmlNodeType.EndElement && xml.LocalName == "table" && xml.NamespaceURI == OpenDocumentXml.Table)
            End();
    }

    private void Begin(XmlReader xml)
    {
        if (_sheets.Count == _limits.Sheets)
            throw RefusalException.TooLarge(Excess.Sheets, _limits.Sheets);
        _table = new(xml.GetAttribute("name", OpenDocumentXml.Table) ?? $"Sheet{_sheets.Count + 1}", _dates, _budget);
        if (xml.IsEmptyElement)
            End();
    }

    private void End()
    {
        if (_table is not null)
            _sheets.Add(_table.ToSheet());
        _table = null;
    }

    /// <summary>A name inside a table belongs to that sheet alone.</summary>
    private void Name(XmlReader xml, string attribute)
    {
        var (name, text) = (xml.GetAttribute("name", OpenDocumentXml.Table), xml.GetAttribute(attribute, OpenDocumentXml.Table));
        if (name is null || text is null)
            return;
        if (_names.Count == _limits.Names)
            throw RefusalException.TooLarge(Excess.Names, _limits.Names);
        text = _budget.CountFormula(text);
        var formula = OpenFormulaText.ToCellFormula(attribute == "expression" ? text : $"of:=[{text}]");
        _names.Add(new(name, _table?.Name, formula));
    }
}
