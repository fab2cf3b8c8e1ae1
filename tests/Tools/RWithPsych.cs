using System.Globalization;

namespace ClassKit.Tests;

/// <summary>The statistics program R with its package psych.</summary>
internal static class RWithPsych
{
    /// <summary>
    /// Runs a script on tables and gives the numbers that it prints for each behind the word <c>result</c>: the package prints remarks of
    /// its own between them.
    /// </summary>
    /// <param name="script">Lines of R, which find the names of the tables' files (comma-separated values without a header) among their
    /// arguments.</param>
    /// <param name="tables">The lines of each table.</param>
    public static IReadOnlyList<double[]> Results(string script, IReadOnlyList<IEnumerable<string>> tables)
    {
        Tool.RWithPsych.Require();
        var folder = Directory.CreateTempSubdirectory("classkit-r-");
        try
        {
            List<string> files = [.. tables.Select((_, at) => Path.Combine(folder.FullName, $"{at}.csv"))];
            foreach (var (file, table) in files.Zip(tables))
                File.WriteAllLines(file, table);
            var lines = Tool
                .RWithPsych.Run(["--vanilla", "-e", script, .. files])
                .Split('\n')
                .Where(line => line.StartsWith("result ", StringComparison.Ordinal))
                .ToList();
            Assert.Equal(tables.Count, lines.Count);
            return
            [
                .. lines.Select(line =>
                    line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                        .Skip(1)
                        .Select(number => double.Parse(number, CultureInfo.InvariantCulture))
                        .ToArray()
                ),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
