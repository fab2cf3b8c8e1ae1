using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using ClassKit.Workbooks.Returned.OpenDocument;

namespace ClassKit.Workbooks.Erasing;

/// <summary>Empties rows of an OpenDocument spreadsheet (.ods), as <see cref="ClearedRows"/> does those of an .xlsx.</summary>
public static class ClearedOpenRows
{
    private const string Content = "content.xml",
        Manifest = "META-INF/manifest.xml",
        Signatures = "META-INF/documentsignatures.xml",
        Picture = "Thumbnails/thumbnail.png";

    private static readonly XNamespace Table = OpenDocumentXml.Table,
        Office = OpenDocumentXml.Office,
        Finer = OpenDocumentXml.Finer,
        Text = OpenDocumentXml.Text;

    private static readonly XmlReaderSettings Reading = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };

    private static readonly XmlWriterSettings Writing = new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false) };

    /// <summary>The spreadsheet with those rows empty.</summary>
    /// <param name="file">The bytes of an .ods file.</param>
    /// <param name="rows">Which, counted from 1, by sheet.</param>
    /// <param name="other">A text that cells say, and what they are to say in its place; null to change none.</param>
    /// <returns>Null for a file that cannot be changed so: one that is signed, or that keeps what its cells said before.</returns>
    public static byte[]? In(byte[] file, IReadOnlyDictionary<string, IReadOnlySet<int>> rows, (string Text, string Now)? other = null)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(rows);
        using var stream = new MemoryStream();
        stream.Write(file);
        try
        {
            using (var package = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true))
            {
                if (package.GetEntry(Signatures) is not null || package.GetEntry(Content) is not { } entry)
                    return null;
                var content = Read(entry);
                if (content.Descendants(Table + "tracked-changes").Any())
                    return null;
                foreach (var (at, sheet) in content.Descendants(Office + "spreadsheet").Elements(Table + "table").Index())
                {
                    var name = (string?)sheet.Attribute(Table + "name") ?? string.Create(CultureInfo.InvariantCulture, $"Sheet{at + 1}");
                    if (rows.TryGetValue(name, out var own))
                        Empty(sheet, own);
                }
                foreach (var said in other is null ? [] : content.Descendants(Text + "p").Where(said => said.Value == other.Value.Text))
                    said.Value = other!.Value.Now;
                Write(entry, content);
                ForgetPicture(package);
            }
            return stream.ToArray();
        }
        catch (Exception failure)
            when (failure is XmlException or IOException or InvalidDataException or InvalidOperationException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>Equal rows are written once, with a count.</summary>
    private static void Empty(XElement sheet, IReadOnlySet<int> rows)
    {
        var before = 0;
        foreach (var row in sheet.Descendants(Table + "table-row").Where(row => row.Ancestors(Table + "table").First() == sheet))
        {
            var last = before + ((int?)row.Attribute(Table + "number-rows-repeated") ?? 1);
            if (rows.Any(number => number > before && number <= last))
                Empty(row);
            before = last;
        }
    }

    private static void Empty(XElement row)
    {
        foreach (var cell in row.Elements().Where(cell => cell.Name == Table + "table-cell" || cell.Name == Table + "covered-table-cell"))
        {
            cell.Attributes().Where(attribute => attribute.Name.Namespace == Office || attribute.Name.Namespace == Finer).Remove();
            cell.RemoveNodes();
        }
    }

    /// <summary>The first sheet as a small picture, on which the names can be read.</summary>
    private static void ForgetPicture(ZipArchive package)
    {
        if (package.GetEntry(Picture) is not { } picture)
            return;
        picture.Delete();
        if (package.GetEntry(Manifest) is not { } entry)
            return;
        var manifest = Read(entry);
        manifest
            .Descendants()
            .Where(listed => listed.Attributes().Any(attribute => attribute.Name.LocalName == "full-path" && attribute.Value == Picture))
            .Remove();
        Write(entry, manifest);
    }

    private static XDocument Read(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        using var reader = XmlReader.Create(stream, Reading);
        return XDocument.Load(reader, LoadOptions.PreserveWhitespace);
    }

    private static void Write(ZipArchiveEntry entry, XDocument document)
    {
        using var stream = entry.Open();
        stream.SetLength(0);
        using var writer = XmlWriter.Create(stream, Writing);
        document.Save(writer);
    }
}
