namespace ClassKit.Desk.Progress;

/// <summary>Lines of what came of a job that are shown together.</summary>
/// <param name="Lines">At least one.</param>
/// <param name="IsFolded">True where the first is said, and the others, which are told of it one by one, are opened when they are wanted.</param>
public sealed record LineGroup(IReadOnlyList<string> Lines, bool IsFolded)
{
    /// <summary>So many lines that belong to one are read at a glance.</summary>
    private const int Few = 9;

    /// <summary>
    /// A line with those that belong to it, which begin with spaces, is a group of its own once they are many; all others follow each other
    /// as they are, however many they are, for none of them says what the next is of.
    /// </summary>
    public static IReadOnlyList<LineGroup> Of(IReadOnlyList<string> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        List<LineGroup> groups = [];
        List<string> plain = [];
        for (var at = 0; at < lines.Count; )
        {
            List<string> one = [lines[at], .. lines.Skip(at + 1).TakeWhile(Belongs)];
            if (one.Count > Few)
            {
                if (plain.Count > 0)
                    groups.Add(new(plain, IsFolded: false));
                plain = [];
                groups.Add(new(one, IsFolded: true));
            }
            else
                plain.AddRange(one);
            at += one.Count;
        }
        if (plain.Count > 0)
            groups.Add(new(plain, IsFolded: false));
        return groups;
    }

    private static bool Belongs(string line) => line.StartsWith("  ", StringComparison.Ordinal);
}
