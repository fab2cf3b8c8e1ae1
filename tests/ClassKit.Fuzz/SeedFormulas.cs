using ClassKit.Tests;

namespace ClassKit.Fuzz;

/// <summary>The formulas of all case files, to start from.</summary>
internal static class SeedFormulas
{
    public static string[] All()
    {
        var folder = Repository.PathOf("tests", "ClassKit.CellFormulas.Tests", "Cases");
        var formulas = Directory
            .EnumerateFiles(folder, "*.cases", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .SelectMany(File.ReadLines)
            .Where(line => !line.StartsWith('#') && line.Contains(" ->", StringComparison.Ordinal))
            .Select(line => line[..line.LastIndexOf(" ->", StringComparison.Ordinal)].Trim())
            .ToArray();
        return formulas.Length > 0 ? formulas : throw new InvalidOperationException($"There are no cases in {folder}.");
    }
}
