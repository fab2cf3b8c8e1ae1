using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace ClassKit.Workbooks.Packages;

/// <summary>Mends what the saving library writes and stricter programs could stumble on.</summary>
internal static partial class SpreadsheetTidying
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>Mends the parts of a workbook, and stores the values of formulas while cells pass by.</summary>
    public static void Rewrite(SortedDictionary<string, byte[]> parts, StoredValues values)
    {
        foreach (var part in parts.Keys.Where(part => part.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)).ToList())
        {
            parts[part] = SheetRewriting.Rewrite(parts[part], TidyColumns, cell =>
            {
                TidyCell(cell);
                values.PutInto(part, cell);
            });
        }

        if (parts.ContainsKey("xl/styles.xml"))
            Change(parts, "xl/styles.xml", TidyStyles);
        Change(parts, "xl/workbook.xml", TidyNames);
    }

    private static void Change(SortedDictionary<string, byte[]> parts, string part, Action<XElement> tidy)
    {
        var xml = PartXml.Load(parts[part]);
        tidy(xml.Root!);
        parts[part] = PartXml.Save(xml);
    }

    /// <summary>Columns are written with the rest of the sheet first; programs expect them from left to right.</summary>
    private static void TidyColumns(XElement columns) =>
        columns.ReplaceNodes(
            columns.Elements().OrderBy(column => int.Parse((string)column.Attribute("min")!, CultureInfo.InvariantCulture)).ToList()
        );

    /// <summary>Empty cells are written as references into the shared strings, to no string.</summary>
    private static void TidyCell(XElement cell)
    {
        if (cell.IsEmpty)
            cell.SetAttributeValue("t", null);
    }

    /// <summary>Rows and columns to repeat in print are written as relative references, which some programs then take for others.</summary>
    private static void TidyNames(XElement workbook)
    {
        foreach (
            var titles in workbook.Descendants(Main + "definedName").Where(name => (string?)name.Attribute("name") == "_xlnm.Print_Titles")
        )
            titles.Value = RelativeEnd().Replace(titles.Value, "$$$&");
    }

    /// <summary>A row or column number without its dollar sign: the ends of <c>Sheet!4:6</c> and <c>Sheet!A:A</c>.</summary>
    [GeneratedRegex("(?<=[!:])([0-9]+|[A-Z]{1,3})(?=:|,|$)")]
    private static partial Regex RelativeEnd();

    /// <summary>The built-in format 0 is declared anew with an empty code, where only formats from 164 on may be declared.</summary>
    private static void TidyStyles(XElement styles)
    {
        if (styles.Element(Main + "numFmts") is not { } formats)
            return;
        formats.Elements().Where(format => (string?)format.Attribute("numFmtId") == "0").Remove();
        if (formats.HasElements)
            formats.SetAttributeValue("count", formats.Elements().Count());
        else
            formats.Remove();
    }
}
