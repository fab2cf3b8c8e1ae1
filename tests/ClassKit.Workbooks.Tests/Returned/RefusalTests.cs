using System.IO.Compression;
using System.Text;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Returned;

public sealed class RefusalTests
{
    private static readonly byte[] CompoundFileSignature = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    [Theory]
    [InlineData("", RefusalKind.Empty, "empty")]
    [InlineData("\0\0\0\0\0\0\0\0", RefusalKind.Empty, "nothing in it")]
    [InlineData("%PDF-1.7 …", RefusalKind.OtherKind, "PDF")]
    [InlineData("<!DOCTYPE html><html>…", RefusalKind.OtherKind, "web page")]
    [InlineData("\uFEFF\n<html lang='en'>", RefusalKind.OtherKind, "web page")]
    [InlineData("part;answer\n1a;780", RefusalKind.OtherKind, "CSV")]
    [InlineData("{\"url\":\"https://docs.google.com/open?id=1\"}", RefusalKind.OtherKind, "online")]
    [InlineData("{\\rtf1 }", RefusalKind.OtherKind, "RTF")]
    [InlineData("<?xml version='1.0'?><Workbook xmlns='urn:schemas-microsoft-com:office:spreadsheet'/>", RefusalKind.OtherSpreadsheet, "2003")]
    [InlineData("<?xml version='1.0'?><office:document xmlns:office='urn:oasis:names:tc:opendocument:xmlns:office:1.0'/>", RefusalKind.OtherSpreadsheet, "OpenDocument")]
    [InlineData("GIF89a\u0001", RefusalKind.OtherKind, "picture")]
    [InlineData("\0\0\0\u0018ftypheic", RefusalKind.OtherKind, "phone")]
    [InlineData("\u0001\u0002\u0003", RefusalKind.OtherKind, "no spreadsheet program")]
    public void A_file_of_another_kind_is_named_for_what_it_is(string content, RefusalKind kind, string words)
    {
        Refused(Encoding.UTF8.GetBytes(content), kind, words);
    }

    [Fact]
    public void A_picture_renamed_to_xlsx_is_named_for_what_it_is()
    {
        Refused([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0], RefusalKind.OtherKind, "PNG");
        Refused([0xFF, 0xD8, 0xFF, 0xE0, 0, 16], RefusalKind.OtherKind, "JPEG");
    }

    [Theory]
    [InlineData("EncryptedPackage", RefusalKind.PasswordProtected, "password")]
    [InlineData("Workbook", RefusalKind.OtherSpreadsheet, ".xls")]
    [InlineData("WordDocument", RefusalKind.OtherKind, ".doc")]
    [InlineData("Other", RefusalKind.OtherKind, "before 2007")]
    public void The_old_container_of_office_files_is_told_apart_by_its_streams(string stream, RefusalKind kind, string words)
    {
        Refused([.. CompoundFileSignature, .. new byte[504], .. Encoding.Unicode.GetBytes(stream + "\0")], kind, words);
    }

    [Theory]
    [InlineData("content.xml,META-INF/manifest.xml,mimetype", RefusalKind.OtherKind, "OpenDocument text")]
    [InlineData("word/document.xml,_rels/.rels", RefusalKind.OtherKind, ".docx")]
    [InlineData("ppt/presentation.xml", RefusalKind.OtherKind, ".pptx")]
    [InlineData("xl/workbook.bin", RefusalKind.OtherSpreadsheet, ".xlsb")]
    [InlineData("Index/Document.iwa,preview.jpg", RefusalKind.OtherSpreadsheet, "Numbers")]
    [InlineData("work/ada-01.xlsx", RefusalKind.OtherKind, "'work/ada-01.xlsx' in it")]
    [InlineData("photo.jpg", RefusalKind.OtherKind, "without a workbook")]
    public void A_zip_archive_that_is_no_workbook_is_named_for_what_it_is(string entries, RefusalKind kind, string words)
    {
        var archive = new HandMade();
        foreach (var entry in entries.Split(','))
            archive.With(entry, entry.EndsWith(".rels", StringComparison.Ordinal) ? HandMade.Relationships(("rId1", "officeDocument", "word/document.xml")) : "x");

        Refused(archive.ToBytes(), kind, words);
    }

    [Fact]
    public void A_zip_archive_without_entries_is_no_workbook()
    {
        Refused(new HandMade().ToBytes(), RefusalKind.OtherKind, "without a workbook");
    }

    [Fact]
    public void A_document_type_is_refused_whatever_it_declares()
    {
        var workbook = HandMade.Sheet("""<row r="1"><c r="A1"><v>5</v></c></row>""");
        workbook.With("xl/sharedStrings.xml", """
            <!DOCTYPE sst [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>
            <sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>&b;</t></si></sst>
            """);

        Refused(workbook.ToBytes(), RefusalKind.Damaged, "xl/sharedStrings.xml");
    }

    [Fact]
    public void Bytes_changed_inside_a_part_are_found_by_its_checksum()
    {
        // Stored, not deflated, so that the changed digit still is good XML.
        using var package = new MemoryStream();
        using (var archive = new ZipArchive(package, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var source = new ZipArchive(new MemoryStream(HandMade.Sheet("""<row r="1"><c r="A1"><v>11223344</v></c></row>""").ToBytes()));
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
        Refused(file, RefusalKind.Damaged, "checksum");
    }

    private static void Refused(byte[] file, RefusalKind kind, string words)
    {
        var reading = ReturnedWorkbookReader.Read(file);

        Assert.Null(reading.Workbook);
        Assert.Equal(kind, reading.Refusal!.Kind);
        Assert.Contains(words, reading.Refusal.Reason, StringComparison.Ordinal);

        // The words go to a student, who must read what to do now.
        Assert.Matches("hand (it|that file|that|in)", reading.Refusal.Reason);
    }
}
