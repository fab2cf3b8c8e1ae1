using ClassKit.Notes;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Notes;

/// <summary>The files that name a student who is erased, in a sentence for each thing that can become of one.</summary>
public static class TraceWords
{
    private const int MostLines = 5;

    /// <summary>A line for all of them, and one for each thing that becomes of some.</summary>
    /// <param name="traces">At least one.</param>
    /// <param name="fate">What became of them.</param>
    internal static IEnumerable<string> Of(IReadOnlyList<StudentTrace> traces, TraceFate fate)
    {
        var files = traces.Where(trace => trace is not StudentTrace.Unread).Select(trace => trace.File).Distinct().Count();
        var head = fate switch
        {
            TraceFate.Gone => $"{Counted.Of(files, "file")} of the folder named the student:",
            TraceFate.Asked => $"{Counted.Of(files, "file")} of the folder {Counted.Noun(files, "names", "name")} the student:",
            TraceFate.Untouched =>
                $"{Counted.Of(files, "file")} of the folder {Counted.Noun(files, "names", "name")} the student and {Counted.Noun(files, "is", "are")} as {Counted.Noun(files, "it was", "they were")}. If you ask to have the student taken out of {Counted.Noun(files, "it", "them")}:",
        };
        return
        [
            .. files > 0 ? [head] : (IEnumerable<string>)[],
            .. Each(traces, fate).Select(group => $"  {group.Title}: {string.Join(", ", group.Files.Select(Shown))}"),
        ];
    }

    /// <summary>A title for each thing that becomes of some, and these files; what is not there is left out.</summary>
    /// <param name="traces">All of them.</param>
    /// <param name="fate">What became of them.</param>
    public static IEnumerable<(string Title, IReadOnlyList<StudentTrace> Files)> Each(IReadOnlyList<StudentTrace> traces, TraceFate fate)
    {
        ArgumentNullException.ThrowIfNull(traces);
        string Done(int count) => fate == TraceFate.Gone ? Counted.Noun(count, "was", "were") : "would be";
        return new (Func<int, string> Title, IReadOnlyList<StudentTrace> Files)[]
        {
            (
                count => $"{Counted.Of(count, "file")} of the student’s alone {Done(count)} deleted",
                [.. traces.OfType<StudentTrace.Theirs>()]
            ),
            (
                count =>
                    $"The student’s own rows {Done(2)} taken out of {Counted.Of(count, "table")}, and nothing else of {Counted.Noun(count, "it", "them")} touched",
                [.. traces.OfType<StudentTrace.Rows>()]
            ),
            (
                count =>
                    $"What is the student’s alone {Done(1)} taken out of {Counted.Of(count, "archive")}, and every other file in {Counted.Noun(count, "it", "them")} left as it was",
                [.. traces.OfType<StudentTrace.Packed>()]
            ),
            (
                count => $"{Counted.Of(count, "file")} made of the whole class {Done(count)} made anew without the student",
                [.. traces.OfType<StudentTrace.Anew>()]
            ),
            (
                count =>
                    $"{Counted.Of(count, "file")} made of the whole class {Counted.Noun(count, "names", "name")} the student until {Counted.Noun(count, "it is", "they are")} made again or deleted",
                [.. traces.OfType<StudentTrace.MadeOfAll>()]
            ),
            (
                count =>
                    $"{Counted.Of(count, "file")} of yours {Counted.Noun(count, "names", "name")} the student in other places and {Counted.Noun(count, "stays", "stay")} for you to change",
                [.. traces.OfType<StudentTrace.Stays>()]
            ),
            (
                count =>
                    $"{Counted.Of(count, "record")} of other folders, or copies of one, {Counted.Noun(count, "names", "name")} the student. Open each folder by itself and erase the student there, or delete the file",
                [.. traces.OfType<StudentTrace.OtherRecord>()]
            ),
            (
                count =>
                    $"{Counted.Of(count, "file")} could not be looked into: damaged, too large, open elsewhere or behind a password. Open {Counted.Noun(count, "it", "each")} and see whether it names the student",
                [.. traces.OfType<StudentTrace.Unread>()]
            ),
        }
            .Where(group => group.Files.Count > 0)
            .Select(group => (group.Title(group.Files.Count), group.Files));
    }

    private static string Shown(StudentTrace trace) => Where(trace) is { Length: > 0 } where ? $"{trace.File} ({where})" : trace.File;

    /// <summary>Where in a file, and what to do there; empty where the title has said it.</summary>
    /// <param name="trace">The file.</param>
    public static string Where(StudentTrace trace) =>
        trace switch
        {
            StudentTrace.Rows { Count: > 1 and var rows } => Counted.Of(rows, "row"),
            StudentTrace.Packed(_, var files, var tables) => string.Join(
                ", ",
                new[] { files > 0 ? Counted.Of(files, "file") : "", tables > 0 ? $"rows of {Counted.Of(tables, "table")}" : "" }.Where(
                    text => text.Length > 0
                )
            ),
            StudentTrace.MadeOfAll(_, var kind) => $"made by `{kind}`",
            StudentTrace.Stays { Lines: { Count: > 0 } lines } => Places(lines),
            StudentTrace.Stays { Inside: { Count: > 0 } inside } => $"unpack it, change {Listed(inside)}, and pack it again",
            StudentTrace.Stays { IsInCells: true } => "in its cells: open it and clear them",
            StudentTrace.Stays { File: var file } when file.EndsWith(".zip", StringComparison.OrdinalIgnoreCase) =>
                "it cannot be written anew: unpack it, or delete it",
            StudentTrace.Stays => "in its name: give it another, or delete it",
            StudentTrace.Unread(_, { Count: > 0 } inside) => $"in it: {Listed(inside)}",
            _ => "",
        };

    private static string Listed(IReadOnlyList<string> files) =>
        files.Count <= MostLines
            ? string.Join(", ", files)
            : $"{string.Join(", ", files.Take(MostLines))} and {Counted.Of(files.Count - MostLines, "other")}";

    /// <summary>As far as somebody would look it up.</summary>
    private static string Places(IReadOnlyList<int> lines) =>
        lines.Count <= MostLines
            ? $"{Counted.Noun(lines.Count, "line", "lines")} {string.Join(", ", lines)}"
            : Counted.Of(lines.Count, "line");
}
