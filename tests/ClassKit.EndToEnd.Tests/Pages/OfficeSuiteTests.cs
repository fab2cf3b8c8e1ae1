using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>LibreOffice opens every kind of workbook that we make and prints it.</summary>
public sealed class OfficeSuiteTests(TourRun tour)
{
    [Fact]
    public void Every_kind_of_workbook_prints()
    {
        Tool.LibreOffice.Require();
        using var folder = new TemporaryFolder();
        // One start of the office suite for all; of two with one name each would replace the other's print.
        List<string> all = [.. Directory.EnumerateFiles(tour.Folder, "*.xlsx", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
        // 24 students', the gradebook, the pack's requisition, observations and tasting, two students' resits, and the term.
        Assert.Equal(24 + 1 + 3 + 2 + 1, all.Count);
        // Students' workbooks of one deal differ in their numbers alone.
        var students = all.Where(file => file.StartsWith(Path.Combine(tour.Folder, "dealt"), StringComparison.Ordinal)).ToList();
        var workbooks = all.Except(students)
            .Concat(Trials.Some(students, 6))
            .ToDictionary(
                file => file,
                file => folder.Of("together", Path.GetRelativePath(tour.Folder, file).Replace(Path.DirectorySeparatorChar, '-'))
            );
        Directory.CreateDirectory(folder.Of("together"));
        foreach (var (file, copy) in workbooks)
            File.Copy(file, copy);
        Tool.LibreOffice.Run([
            $"-env:UserInstallation={new Uri(folder.Of("profile")).AbsoluteUri}",
            "--headless",
            "--convert-to",
            "pdf",
            "--outdir",
            folder.Of("pdf"),
            .. workbooks.Values,
        ]);

        foreach (var (workbook, copy) in workbooks)
        {
            var text = Tool.PdfToText.Run("-layout", folder.Of("pdf", Path.GetFileNameWithoutExtension(copy) + ".pdf"), "-");
            Assert.DoesNotContain("#REF!", text, StringComparison.Ordinal);
            Assert.DoesNotContain("#NAME?", text, StringComparison.Ordinal);
            Assert.DoesNotContain("###", text, StringComparison.Ordinal);
            // A page for the start, then one an exercise: nothing spills over.
            if (workbook.Contains("workbooks", StringComparison.Ordinal))
                Assert.Equal(
                    1 + (workbook.Contains("resit", StringComparison.Ordinal) ? 2 : 8),
                    text.Count(character => character == '\f')
                );
        }
    }
}
