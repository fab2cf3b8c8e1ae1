using ClassKit.Workbooks.Erasing;

namespace ClassKit.UseCases.Erasing;

/// <summary>Workbooks with rows emptied, of either kind.</summary>
internal static class Emptied
{
    /// <summary>The workbook with those rows empty; null if it cannot be changed so.</summary>
    /// <param name="file">Its name, whose ending says the kind.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="rows">Which, counted from 1, by sheet.</param>
    /// <param name="other">A text that cells say, and what they are to say in its place; null to change none.</param>
    public static byte[]? Of(
        string file,
        byte[] bytes,
        IReadOnlyDictionary<string, IReadOnlySet<int>> rows,
        (string Text, string Now)? other = null
    ) =>
        Path.GetExtension(file).Equals(".ods", StringComparison.OrdinalIgnoreCase)
            ? ClearedOpenRows.In(bytes, rows, other)
            : ClearedRows.In(bytes, rows, other);
}
