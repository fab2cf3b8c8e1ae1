namespace ClassKit.Cli.Reporting;

/// <summary>How wide lines may be where somebody reads them: in a pipe or a file nothing is broken, since a program may read it.</summary>
/// <param name="Output">Columns of the terminal that results go to; null where they go to no terminal.</param>
/// <param name="Problems">Columns of the terminal that problems go to; null where they go to no terminal.</param>
public sealed record TerminalWidth(int? Output, int? Problems)
{
    /// <summary>Narrower than this, breaking lines helps nobody.</summary>
    private const int Least = 24;

    /// <summary>No terminal.</summary>
    public static readonly TerminalWidth None = new(null, null);

    /// <summary>That of the terminal this process runs in.</summary>
    public static TerminalWidth OfConsole => new(Of(Console.IsOutputRedirected), Of(Console.IsErrorRedirected));

    /// <summary>What is written to, broken at a width if there is one.</summary>
    internal static TextWriter Fold(TextWriter writer, int? width) =>
        width is >= Least and var columns ? new FoldedWriter(writer, columns) : writer;

    private static int? Of(bool isRedirected)
    {
        if (isRedirected)
            return null;
        try
        {
            // A row filled to its end takes an empty one with it in some terminals.
            return Console.WindowWidth - 1;
        }
        catch (IOException)
        {
            // A terminal that does not say: it breaks lines itself.
            return null;
        }
    }
}
