using System.Globalization;
using System.Xml;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>
/// Reads the document properties: Dublin Core in packages (ECMA-376 Part 2, 11), the same words and a few of its own in OpenDocument (1.3
/// Part 3, 4.3).
/// </summary>
internal sealed class DocumentPropertiesPart
{
    private const int MostText = 255;

    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);

    /// <summary>What the part says; nothing if it is not there or broken, for no work is lost over that.</summary>
    public static DocumentProperties Read(Package package, string? part)
    {
        if (part is null)
            return DocumentProperties.None;
        var reading = new DocumentPropertiesPart();
        try
        {
            XmlPart.TryRead(package, part, xml =>
            {
                while (xml.Next())
                    reading.Take(xml);
            });
        }
        catch (RefusalException refused) when (refused.Refusal is Refusal.Damaged)
        {
            return DocumentProperties.None;
        }

        return reading.Properties;
    }

    private DocumentProperties Properties =>
        new(
            Text("initial-creator") ?? Text("creator"),
            Text("lastModifiedBy") ?? (_texts.ContainsKey("initial-creator") ? Text("creator") : null),
            Time("created") ?? Time("creation-date"),
            Time("modified") ?? Time("date")
        );

    private void Take(XmlReader xml)
    {
        if (
            xml.NodeType != XmlNodeType.Element
            || xml.LocalName
                is not ("initial-creator" or "creator" or "lastModifiedBy" or "created" or "creation-date" or "modified" or "date")
        )
            return;
        var name = xml.LocalName;
        var text = xml.ReadText().Trim();
        if (text.Length is > 0 and <= MostText)
            _texts.TryAdd(name, text);
    }

    /// <summary>
    /// The same of a program that writes what its clock shows, with the sign of universal time behind it: LibreOffice in SpreadsheetML (from
    /// memory; its source fills the date with the system's local time).
    /// </summary>
    public static DocumentProperties Read(Package package, string? part, string? app)
    {
        var read = Read(package, part);
        return
            app is not null
            && read.Modified is { } time
            && Program(package, app).Contains("LibreOffice", StringComparison.OrdinalIgnoreCase)
            ? read with
            {
                Modified = DateTime.SpecifyKind(time, DateTimeKind.Unspecified),
            }
            : read;
    }

    private static string Program(Package package, string part)
    {
        var program = "";
        try
        {
            XmlPart.TryRead(package, part, xml =>
            {
                while (xml.Next())
                {
                    if (xml is { NodeType: XmlNodeType.Element, LocalName: "Application" })
                        program = xml.ReadText();
                }
            });
        }
        catch (RefusalException refused) when (refused.Refusal is Refusal.Damaged)
        {
            return "";
        }
        return program;
    }

    private string? Text(string name) => _texts.GetValueOrDefault(name);

    /// <summary>
    /// In universal time where it names its zone; else as it stands, of a kind that is not specified. A date and time may leave its zone out
    /// (XML Schema Part 2, 3.2.7), which LibreOffice does in OpenDocument.
    /// </summary>
    private DateTime? Time(string name) =>
        DateTime.TryParse(Text(name), CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var time)
            ? time.Kind == DateTimeKind.Local
                ? time.ToUniversalTime()
                : time
            : null;
}
