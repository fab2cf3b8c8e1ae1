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

    private string? Text(string name) => _texts.GetValueOrDefault(name);

    private DateTime? Time(string name) =>
        DateTime.TryParse(
            Text(name),
            CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal,
            out var time
        )
            ? time
            : null;
}
