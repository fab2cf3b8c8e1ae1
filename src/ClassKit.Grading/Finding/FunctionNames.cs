using System.Collections.Frozen;

namespace ClassKit.Grading.Finding;

/// <summary>
/// What spreadsheet functions are called in the programs of other languages, as far as students meet them and ClassKit works them out.
/// </summary>
/// <remarks>
/// The table <c>function-names.csv</c> has the names that spreadsheet programs publish; read from the language packs that an open-source
/// formula engine publishes (handsontable/hyperformula, src/i18n/languages, 2025), those of CONVERT and of Portugal from memory.
/// </remarks>
internal static class FunctionNames
{
    private static readonly FrozenDictionary<string, string> ByName = Read();

    /// <summary>
    /// The name that files use, for a name in any of the languages; null for an unknown one and for one that is English already.
    /// </summary>
    public static string? English(string name) => ByName.GetValueOrDefault(name);

    private static FrozenDictionary<string, string> Read()
    {
        using var stream = typeof(FunctionNames).Assembly.GetManifestResourceStream("function-names.csv")!;
        using var reader = new StreamReader(stream);
        var names = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        reader.ReadLine();
        while (reader.ReadLine() is { } line)
        {
            var cells = line.Split(',');
            foreach (var name in cells.Skip(1).SelectMany(cell => cell.Split(' ', StringSplitOptions.RemoveEmptyEntries)))
            {
                if (!string.Equals(name, cells[0], StringComparison.OrdinalIgnoreCase))
                    names.TryAdd(name, cells[0]);
            }
        }
        return names.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);
    }
}
