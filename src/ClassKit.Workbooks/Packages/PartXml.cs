using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace ClassKit.Workbooks.Packages;

/// <summary>XML parts of packages that this program made itself, as documents in memory.</summary>
internal static class PartXml
{
    /// <summary>How every part is written.</summary>
    public static XmlWriterSettings Settings { get; } =
        new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), NewLineChars = "\n" };

    public static XDocument Load(byte[] content)
    {
        using var stream = new MemoryStream(content);
        return XDocument.Load(stream, LoadOptions.PreserveWhitespace);
    }

    public static byte[] Save(XDocument xml)
    {
        using var stream = new MemoryStream();
        using (var writer = XmlWriter.Create(stream, Settings))
            xml.Save(writer);
        return stream.ToArray();
    }
}
