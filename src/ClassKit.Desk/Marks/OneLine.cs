namespace ClassKit.Desk.Marks;

/// <summary>What was typed as one cell of a Markdown table: on one line, and without what ends a cell.</summary>
internal static class OneLine
{
    public static string Of(string typed) => new string([.. typed.Where(letter => !char.IsControl(letter) && letter != '|')]).Trim();
}
