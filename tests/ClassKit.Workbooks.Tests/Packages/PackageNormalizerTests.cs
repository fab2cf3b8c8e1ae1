using System.IO.Compression;
using System.Text.RegularExpressions;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Packages;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Packages;

public sealed partial class PackageNormalizerTests
{
    private static readonly byte[] Written = DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[0]);

    [Fact]
    public void Writing_twice_gives_the_same_bytes()
    {
        Assert.Equal(Written, DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[0]));
    }

    [Fact]
    public void Writing_on_a_machine_with_decimal_commas_gives_the_same_bytes()
    {
        using var _ = new CommaDecimals();

        Assert.Equal(Written, DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[0]));
    }

    [Fact]
    public void A_normalized_package_stays_as_it_is()
    {
        Assert.Equal(Written, PackageNormalizer.Normalize(Written));
    }

    [Fact]
    public void Every_entry_carries_the_same_time()
    {
        using var archive = Open();

        Assert.All(archive.Entries, entry => Assert.Equal(new DateTime(1980, 1, 1), entry.LastWriteTime.DateTime));
    }

    [Fact]
    public void No_part_says_when_it_was_made_or_has_a_name_drawn_at_random()
    {
        using var archive = Open();

        foreach (var entry in archive.Entries)
        {
            Assert.DoesNotMatch(LongHexadecimal(), entry.FullName);
            using var reader = new StreamReader(entry.Open());
            var text = reader.ReadToEnd();
            Assert.DoesNotContain("dcterms:", text, StringComparison.Ordinal);
            if (entry.FullName.EndsWith(".rels", StringComparison.Ordinal))
                Assert.DoesNotMatch(LongHexadecimal(), text);
        }
    }

    [Fact]
    public void The_content_types_come_first_and_name_every_part()
    {
        using var archive = Open();
        using var reader = new StreamReader(archive.Entries[0].Open());
        var types = reader.ReadToEnd();

        Assert.Equal("[Content_Types].xml", archive.Entries[0].FullName);
        Assert.All(archive.Entries.Skip(1).Where(entry => entry.FullName.EndsWith(".xml", StringComparison.Ordinal)), entry =>
            Assert.Contains($"\"/{entry.FullName}\"", types, StringComparison.Ordinal)
        );
    }

    private static ZipArchive Open() => new(new MemoryStream(Written), ZipArchiveMode.Read);

    [GeneratedRegex("[0-9a-f]{12,}")]
    private static partial Regex LongHexadecimal();
}
