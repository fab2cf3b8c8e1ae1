namespace ClassKit.CellFormulas.Tests.Support;

/// <summary>
/// A file of cases: lines <c>A1: 5</c> fill cells of Sheet1, lines <c>formula -> value</c> are cases, <c>#</c> after two spaces or at the
/// start is a remark. <c>! value</c> after the value is what LibreOffice gives where it knowingly differs, with the reason as remark;
/// <c>~</c> allows for rounding near 0.
/// </summary>
internal sealed record CaseFile(string Name, IReadOnlyList<(string Cell, string Content)> Cells, IReadOnlyList<FormulaCase> Cases)
{
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "Cases");

    public static IEnumerable<string> Names(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(Folder, folder), "*.cases")
            .Select(path => Path.GetFileNameWithoutExtension(path)!)
            .Order(StringComparer.Ordinal);

    public static CaseFile Read(string folder, string name)
    {
        var cells = new List<(string, string)>();
        var cases = new List<FormulaCase>();
        foreach (var line in File.ReadLines(Path.Combine(Folder, folder, name + ".cases")))
        {
            var remark = line.StartsWith('#') ? 0 : line.IndexOf("  # ", StringComparison.Ordinal);
            var text = (remark < 0 ? line : line[..remark]).Trim();
            if (text.Length == 0)
                continue;
            var arrow = text.EndsWith(" ->", StringComparison.Ordinal)
                ? text.Length - 3
                : text.LastIndexOf(" -> ", StringComparison.Ordinal);
            if (arrow >= 0)
            {
                cases.Add(FormulaCase.Read(text[..arrow].Trim(), text[(arrow + 3)..].Trim()));
                continue;
            }

            var colon = text.IndexOf(": ", StringComparison.Ordinal);
            Assert.True(colon > 0, $"{name}: no case and no cell: {line}");
            cells.Add((text[..colon], text[(colon + 2)..]));
        }

        return new(name, cells, cases);
    }

    /// <summary>The cell that a case's formula stands in.</summary>
    public static string CellOf(int index) => $"Z{index + 1}";

    public Book ToBook()
    {
        var book = new Book();
        foreach (var (cell, content) in Cells)
            book[cell] = content;
        for (var at = 0; at < Cases.Count; at++)
            book[CellOf(at)] = "=" + Cases[at].Formula;
        return book;
    }
}
