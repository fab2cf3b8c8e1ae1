using System.IO.Compression;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Returns;

namespace ClassKit.Desk.Tests.Decisions;

/// <summary>A zip alone names its files without itself: each of them is decided all the same, in folders and without.</summary>
public sealed class ApartFileTests : IDisposable
{
    private readonly Round _round = new("class", Directory.CreateTempSubdirectory("classkit-round").FullName);

    public void Dispose() => Directory.Delete(_round.Folder, recursive: true);

    [Theory]
    [InlineData("Jansen.docx", "Jansen.docx", false)]
    [InlineData("week 3/Jansen.docx", "week 3/Jansen.docx", false)]
    [InlineData("Jansen.docx", "all.zip/Jansen.docx", false)]
    [InlineData("Jansen.docx", "all.zip/Jansen.docx", true)]
    public void A_file_of_a_zip_is_found_as_the_account_names_it(string inside, string named, bool isBesideAnother)
    {
        Directory.CreateDirectory(_round.Returned);
        using (var zip = ZipFile.Open(Path.Combine(_round.Returned, "all.zip"), ZipArchiveMode.Create))
            foreach (var name in new[] { inside, "notes.txt" })
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(System.Text.Encoding.UTF8.GetBytes(name));
            }
        if (isBesideAnother)
            File.WriteAllText(Path.Combine(_round.Returned, "other.txt"), "");

        var found = ApartFile.Find(_round, named);

        Assert.Equal(inside, File.ReadAllText(Path.Combine(_round.Returned, found!)));
        Assert.True(File.Exists(Path.Combine(_round.SetAside, "all.zip")));
    }
}
