using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>LibreOffice opens every workbook that we make and prints it.</summary>
public sealed class OfficeSuiteTests(TourRun tour)
{
    [Fact]
    public void Every_workbook_prints()
    {
        Tool.LibreOffice.Require();
        using var folder = new TemporaryFolder();
        var workbooks = Directory.EnumerateFiles(tour.Folder, "*.xlsx", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();
        Tool.LibreOffice.Run([$"-env:UserInstallation={new Uri(folder.Of("profile")).AbsoluteUri}", "--headless", "--convert-to", "pdf", "--outdir", folder.Of("pdf"), .. workbooks]);

        // 24 students', the gradebook, and the pack's requisition, observations and tasting.
        Assert.Equal(24 + 1 + 3, workbooks.Count);
        foreach (var workbook in workbooks)
        {
            var text = Tool.PdfToText.Run("-layout", folder.Of("pdf", Path.GetFileNameWithoutExtension(workbook) + ".pdf"), "-");
            Assert.DoesNotContain("#REF!", text, StringComparison.Ordinal);
            Assert.DoesNotContain("#NAME?", text, StringComparison.Ordinal);
            Assert.DoesNotContain("###", text, StringComparison.Ordinal);
            // A page for the start, then one an exercise: nothing spills over.
            if (workbook.Contains("workbooks", StringComparison.Ordinal)) Assert.Equal(1 + 8, text.Count(character => character == '\f'));
        }
    }
}
