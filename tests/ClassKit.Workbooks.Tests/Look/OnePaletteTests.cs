using System.IO.Compression;
using System.Text.RegularExpressions;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.Look;

/// <summary>Pages and workbooks of one class lie side by side: they have the same colours.</summary>
public sealed partial class OnePaletteTests
{
    /// <summary>The stylesheet is the only place where pages name colours; its first block is that of light pages.</summary>
    [Fact]
    public void Every_colour_of_a_workbook_is_one_of_a_light_page()
    {
        var stylesheet = File.ReadAllText(Repository.PathOf("src", "ClassKit.Pages", "Layout", "classkit.css"));
        var pages = Named()
            .Matches(
                stylesheet[stylesheet.IndexOf(":root {", StringComparison.Ordinal)..stylesheet.IndexOf("@media", StringComparison.Ordinal)]
            )
            .Select(match => match.Groups[1].Value.ToUpperInvariant())
            .ToHashSet();
        Assert.True(pages.Count > 20, string.Join(' ', pages));
        // What every spreadsheet program's own styles have.
        pages.UnionWith(["FFFFFF", "000000"]);

        foreach (
            var workbook in new[]
            {
                GradebookWriter.Write(SampleGrades.Grades, SampleGrades.Summary),
                DealtWorkbookWriter.Write(SampleClass.Dealt, SampleClass.Dealt.Students[0]),
            }
        )
        {
            using var package = new ZipArchive(new MemoryStream(workbook));
            var used = package
                .Entries.Where(entry => entry.FullName.EndsWith(".xml", StringComparison.Ordinal))
                .SelectMany(ColoursOf)
                .ToHashSet();
            Assert.True(used.Count > 5, string.Join(' ', used));
            Assert.Empty(used.Except(pages));
        }
    }

    private static IEnumerable<string> ColoursOf(ZipArchiveEntry part)
    {
        using var text = new StreamReader(part.Open());
        return [.. Used().Matches(text.ReadToEnd()).Select(match => match.Groups[1].Value.ToUpperInvariant())];
    }

    [GeneratedRegex(@"--[a-z-]+:\s*#([0-9a-f]{6});")]
    private static partial Regex Named();

    /// <summary>ECMA-376 Part 1, 18.8.3: alpha, red, green and blue in two digits each.</summary>
    [GeneratedRegex("rgb=\"[0-9A-Fa-f]{2}([0-9A-Fa-f]{6})\"")]
    private static partial Regex Used();
}
