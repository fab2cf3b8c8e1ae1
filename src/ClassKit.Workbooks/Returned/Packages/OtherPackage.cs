using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>Tells by its parts what a zip archive is that is no workbook.</summary>
internal static class OtherPackage
{
    /// <summary>What to say of a package; null for one with a workbook that we read.</summary>
    /// <param name="package">The package.</param>
    /// <param name="main">The part that it names as its main one.</param>
    public static Refusal? Explain(Package package, string main)
    {
        if (main.EndsWith("workbook.bin", StringComparison.OrdinalIgnoreCase) || package.Has("xl/workbook.bin"))
            return new Refusal.OtherKind(FileKind.BinaryWorkbook);
        if (package.Has("word/document.xml"))
            return new Refusal.OtherKind(FileKind.Document);
        if (package.Has("ppt/presentation.xml"))
            return new Refusal.OtherKind(FileKind.Presentation);
        if (package.Has(main))
            return null;
        if (package.Has("META-INF/manifest.xml") && package.Has("content.xml"))
            return new Refusal.OtherKind(FileKind.OpenDocument);
        if (package.Parts.Any(part => part.EndsWith(".iwa", StringComparison.OrdinalIgnoreCase)))
            return new Refusal.OtherKind(FileKind.Numbers);
        if (package.Parts.FirstOrDefault(part => part.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase)) is { } inside)
            return new Refusal.OtherKind(FileKind.ArchiveWithWorkbook) { Inside = new(inside) };
        return new Refusal.OtherKind(FileKind.EmptyArchive);
    }
}
