namespace ClassKit.Fuzz;

/// <summary>The formulas of all case files, to start from.</summary>
internal static class SeedFormulas
{
    public static string[] All()
    {
        var formulas = Directory.EnumerateFiles(Folder(), "*.cases", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .SelectMany(File.ReadLines)
            .Where(line => !line.StartsWith('#') && line.Contains(" ->", StringComparison.Ordinal))
            .Select(line => line[..line.LastIndexOf(" ->", StringComparison.Ordinal)].Trim())
            .ToArray();
        return formulas.Length > 0 ? formulas : throw new InvalidOperationException($"There are no cases in {Folder()}.");
    }

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ClassKit.sln"))) folder = folder.Parent;
        return Path.Combine(folder?.FullName ?? ".", "tests", "ClassKit.CellFormulas.Tests", "Cases");
    }
}
