using System.IO.Compression;
using System.Xml.Linq;
using ClassKit.ItemBanks.Packages;

namespace ClassKit.ItemBanks.Tests.Support;

/// <summary>A package as a program would open it.</summary>
internal sealed class OpenedBank
{
    public OpenedBank(ItemBank bank)
    {
        using var zip = new ZipArchive(new MemoryStream(bank.Package), ZipArchiveMode.Read);
        Pictures = zip
            .Entries.Where(entry => !entry.Name.EndsWith(".xml", StringComparison.Ordinal))
            .ToDictionary(
                entry => entry.FullName,
                entry =>
                {
                    using var stream = entry.Open();
                    using var bytes = new MemoryStream();
                    stream.CopyTo(bytes);
                    return bytes.ToArray();
                }
            );
        Files = zip
            .Entries.Where(entry => entry.Name.EndsWith(".xml", StringComparison.Ordinal))
            .ToDictionary(
                entry => entry.FullName,
                entry =>
                {
                    using var stream = entry.Open();
                    return XElement.Load(stream, LoadOptions.PreserveWhitespace);
                }
            );
    }

    public IReadOnlyDictionary<string, byte[]> Pictures { get; }

    public IReadOnlyDictionary<string, XElement> Files { get; }

    public XElement Manifest => Files["imsmanifest.xml"];

    public IReadOnlyDictionary<string, XElement> Items =>
        Files
            .Where(file => file.Key.StartsWith("items/", StringComparison.Ordinal))
            .ToDictionary(file => Path.GetFileNameWithoutExtension(file.Key), file => file.Value);
}
