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
            return Refusals.OtherSpreadsheet("an Excel binary workbook (.xlsb)");
        if (package.Has("word/document.xml")) return Refusals.OtherKind("a text document (.docx)");
        if (package.Has("ppt/presentation.xml")) return Refusals.OtherKind("a presentation (.pptx)");
        if (package.Has(main)) return null;
        if (package.Has("META-INF/manifest.xml") && package.Has("content.xml"))
            return Refusals.OtherKind("an OpenDocument text, drawing or presentation");
        if (package.Parts.Any(part => part.EndsWith(".iwa", StringComparison.OrdinalIgnoreCase)))
            return Refusals.OtherSpreadsheet("a Numbers document (.numbers)");
        if (package.Parts.FirstOrDefault(part => part.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase)) is { } inside)
            return Refusals.Packed($"a zip archive with '{inside}' in it");
        return Refusals.OtherKind("a zip archive without a workbook in it");
    }
}
