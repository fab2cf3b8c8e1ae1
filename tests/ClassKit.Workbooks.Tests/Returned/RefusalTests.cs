using System.IO.Compression;
using System.Text;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Returned;

public sealed class RefusalTests
{
    private static readonly byte[] CompoundFileSignature = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    [Theory]
    [InlineData("%PDF-1.7 …", FileKind.Pdf)]
    [InlineData("<!DOCTYPE html><html>…", FileKind.WebPage)]
    [InlineData("\uFEFF\n<html lang='en'>", FileKind.WebPage)]
    [InlineData("part;answer\n1a;780", FileKind.PlainText)]
    [InlineData("{\"url\":\"https://docs.google.com/open?id=1\"}", FileKind.OnlineLink)]
    [InlineData("{\\rtf1 }", FileKind.Rtf)]
    [InlineData("<?xml version='1.0'?><Workbook xmlns='urn:schemas-microsoft-com:office:spreadsheet'/>", FileKind.XmlWorkbook)]
    [InlineData(
        "<?xml version='1.0'?><office:document xmlns:office='urn:oasis:names:tc:opendocument:xmlns:office:1.0'/>",
        FileKind.FlatOpenDocument
    )]
    [InlineData("GIF89a\u0001", FileKind.Gif)]
    [InlineData("\0\0\0\u0018ftypheic", FileKind.PhonePicture)]
    [InlineData("\u0001\u0002\u0003", FileKind.Unknown)]
    public void A_file_of_another_kind_is_named_for_what_it_is(string content, FileKind kind)
    {
        Refused(Encoding.UTF8.GetBytes(content), kind);
    }

    [Fact]
    public void A_picture_renamed_to_xlsx_is_named_for_what_it_is()
    {
        Refused([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0], FileKind.Png);
        Refused([0xFF, 0xD8, 0xFF, 0xE0, 0, 16], FileKind.Jpeg);
    }

    [Theory]
    [InlineData("Workbook", FileKind.OldWorkbook)]
    [InlineData("WordDocument", FileKind.OldDocument)]
    [InlineData("Other", FileKind.OldOffice)]
    public void The_old_container_of_office_files_is_told_apart_by_its_streams(string stream, FileKind kind)
    {
        Refused([.. CompoundFileSignature, .. new byte[504], .. Encoding.Unicode.GetBytes(stream + "\0")], kind);
    }

    [Theory]
    [InlineData("content.xml,META-INF/manifest.xml,mimetype", FileKind.OpenDocument)]
    [InlineData("word/document.xml,_rels/.rels", FileKind.Document)]
    [InlineData("ppt/presentation.xml", FileKind.Presentation)]
    [InlineData("xl/workbook.bin", FileKind.BinaryWorkbook)]
    [InlineData("Index/Document.iwa,preview.jpg", FileKind.Numbers)]
    [InlineData("photo.jpg", FileKind.EmptyArchive)]
    public void A_zip_archive_that_is_no_workbook_is_named_for_what_it_is(string entries, FileKind kind)
    {
        var archive = new HandMade();
        foreach (var entry in entries.Split(','))
            archive.With(
                entry,
                entry.EndsWith(".rels", StringComparison.Ordinal)
                    ? HandMade.Relationships(("rId1", "officeDocument", "word/document.xml"))
                    : "x"
            );

        Refused(archive.ToBytes(), kind);
    }

    [Fact]
    public void A_zip_archive_without_entries_is_no_workbook()
    {
        Refused(new HandMade().ToBytes(), FileKind.EmptyArchive);
    }

    [Fact]
    public void A_document_type_is_refused_whatever_it_declares()
    {
        var workbook = HandMade.Sheet("""<row r="1"><c r="A1"><v>5</v></c></row>""");
        workbook.With(
            "xl/sharedStrings.xml",
            """
            <!DOCTYPE sst [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>
            <sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>&b;</t></si></sst>
            """
        );

        Refused(workbook.ToBytes(), new Refusal.Damaged(new Damage.NoXml("xl/sharedStrings.xml")));
    }

    [Fact]
    public void Bytes_changed_inside_a_part_are_found_by_its_checksum()
    {
        // Stored, not deflated, so that the changed digit still is good XML.
        using var package = new MemoryStream();
        using (var archive = new ZipArchive(package, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var source = new ZipArchive(
                new MemoryStream(HandMade.Sheet("""<row r="1"><c r="A1"><v>11223344</v></c></row>""").ToBytes())
            );
            foreach (var entry in source.Entries)
            {
                using var from = entry.Open();
                using var to = archive.CreateEntry(entry.FullName, CompressionLevel.NoCompression).Open();
                from.CopyTo(to);
            }
        }

        var file = package.ToArray();
        Assert.Null(ReturnedWorkbookReader.Read(file).Refusal);
        file[file.AsSpan().IndexOf("11223344"u8)] = (byte)'9';
        Refused(file, new Refusal.Damaged(new Damage.Checksum("xl/worksheets/sheet1.xml")));
    }

    [Fact]
    public void A_file_that_says_nothing_is_told_from_one_of_another_kind()
    {
        Refused([], new Refusal.Empty());
        Refused(new byte[8], new Refusal.OnlyZeros());
        Refused(
            [.. CompoundFileSignature, .. new byte[504], .. Encoding.Unicode.GetBytes("EncryptedPackage\0")],
            new Refusal.PasswordProtected()
        );
        Refused(
            new HandMade().With("work/ada-01.xlsx", "x").ToBytes(),
            new Refusal.OtherKind(FileKind.ArchiveWithWorkbook) { Inside = new("work/ada-01.xlsx") }
        );
    }

    private static void Refused(byte[] file, FileKind kind) => Refused(file, new Refusal.OtherKind(kind));

    private static void Refused(byte[] file, Refusal why)
    {
        var reading = ReturnedWorkbookReader.Read(file);

        Assert.Null(reading.Workbook);
        Assert.Equal(why, reading.Refusal);
    }
}
