namespace ClassKit.UseCases.Output.Writing;

/// <summary>Gives several files other names, all of them or none.</summary>
public static class FileMoves
{
    /// <summary>Moves them one after another; where one cannot be moved, those before it go back.</summary>
    /// <param name="moves">From where to where; nothing may lie where one is to go.</param>
    /// <exception cref="IOException">One cannot be moved; all are where they were, or it says which is not.</exception>
    /// <exception cref="UnauthorizedAccessException">One must not be moved; all are where they were.</exception>
    public static void All(IEnumerable<(string From, string To)> moves)
    {
        ArgumentNullException.ThrowIfNull(moves);
        var done = new Stack<(string From, string To)>();
        try
        {
            foreach (var move in moves)
            {
                File.Move(move.From, move.To, overwrite: false);
                done.Push(move);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            foreach (var (from, to) in done)
                Back(from, to, failure);
            throw;
        }
    }

    private static void Back(string from, string to, Exception because)
    {
        try
        {
            File.Move(to, from, overwrite: false);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new IOException(
                $"{because.Message} And {Path.GetFileName(from)} lies under the name {Path.GetFileName(to)} now: {failure.Message}",
                because
            );
        }
    }
}
