using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.UseCases.Touring;

namespace ClassKit.EndToEnd.Tests.Tour;

public sealed class TourTests(TourRun tour)
{
    [Fact]
    public void Two_tours_are_the_same_to_the_byte_and_one_over_an_earlier_one_leaves_the_same_and_keeps_what_the_instructor_put_there()
    {
        using var folder = new TemporaryFolder();
        ClassKitRun.Of("tour", "--out", folder.Of("tour")).Done();
        Assert.Equal(FolderContent.Digests(tour.Folder), FolderContent.Digests(folder.Of("tour")));
        File.WriteAllText(folder.Of("tour", "graded", "my notes.txt"), "mine");
        ClassKitRun.Of("tour", "--out", folder.Of("tour")).Done();

        Assert.Equal("mine", File.ReadAllText(folder.Of("tour", "graded", "my notes.txt")));
        File.Delete(folder.Of("tour", "graded", "my notes.txt"));
        Assert.Equal(FolderContent.Digests(tour.Folder), FolderContent.Digests(folder.Of("tour")));
        Assert.Equal(["tour"], Directory.EnumerateFileSystemEntries(folder.Path).Select(Path.GetFileName));
    }

    /// <summary>Microsoft Learn, "Naming Files, Paths, and Namespaces": what no name there may hold, end in or be.</summary>
    [Fact]
    public void What_it_writes_can_be_copied_to_systems_that_tell_no_case_apart_and_keep_names_for_devices()
    {
        var paths = Directory
            .EnumerateFileSystemEntries(tour.Folder, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(tour.Folder, path))
            .ToList();

        Assert.True(paths.Count > 50);
        Assert.Equal(paths, paths.DistinctBy(path => path.ToUpperInvariant()));
        Assert.All(paths.Select(path => Path.GetFileName(path)), name =>
            Assert.DoesNotMatch(@"(?i)[<>:""\\|?*\x00-\x1F]|[ .]$|^(con|prn|aux|nul|com\d|lpt\d)(\.|$)", name)
        );
    }

    [Fact]
    public void It_ends_by_naming_files_that_are_there()
    {
        var named = tour.Output.Split("Open these first:")[1];

        Assert.NotEmpty(TakeTour.OpenFirst);
        foreach (var (file, _) in TakeTour.OpenFirst)
        {
            Assert.Contains(Path.Combine(tour.Folder, file), named, StringComparison.Ordinal);
            Assert.True(File.Exists(Path.Combine(tour.Folder, file)), file);
        }
    }

    [Fact]
    public void Every_file_that_came_back_is_accounted_for_once()
    {
        var returned = Directory
            .EnumerateFiles(Checkout.Demo.Returned, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Checkout.Demo.Returned, path))
            .Order(StringComparer.Ordinal);
        var accounted = tour
            .Grades.GetProperty("students")
            .EnumerateArray()
            .Select(student => student.GetProperty("file").GetString())
            .OfType<string>()
            .Concat(tour.Grades.GetProperty("unmatched").EnumerateArray().Select(file => file.GetProperty("file").GetString()!))
            .Order(StringComparer.Ordinal);

        Assert.Equal(returned, accounted);
    }

    [Fact]
    public void Students_get_nothing_but_their_workbooks_and_sheets()
    {
        Assert.Equal(24, Directory.EnumerateFiles(Path.Combine(tour.Folder, "dealt", "workbooks")).Count());
        Assert.Equal(24, Directory.EnumerateFiles(Path.Combine(tour.Folder, "dealt", "sheets")).Count());
        Assert.Equal(
            ["answer-key.html", "dealt.json", "sheets-to-print.html"],
            Directory.EnumerateFiles(Path.Combine(tour.Folder, "dealt")).Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Every_page_of_the_tour_begins_its_sentences_well_and_has_no_digits_too_many()
    {
        foreach (var page in tour.Pages)
        {
            var text = File.ReadAllText(page);
            Assert.Equal(
                (page, "", ""),
                (page, string.Join('\n', Sentences.BeginningLow(text)), string.Join('\n', Sentences.Touching(text)))
            );
            // What is bought is weighed finely, and a grade shows its working, which must add up.
            if (
                !page.EndsWith("requisition.html", StringComparison.Ordinal)
                && !page.StartsWith(Path.Combine(tour.Folder, "term"), StringComparison.Ordinal)
            )
                Assert.Equal((page, ""), (page, string.Join('\n', Digits.TooFine(text))));
        }
    }
}
