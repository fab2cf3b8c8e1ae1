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
        var files = traces.Select(trace => trace.File).Distinct().Count();
        var head = fate switch
        {
            TraceFate.Gone => $"{Counted.Of(files, "file")} of the folder named the student:",
            TraceFate.Asked => $"{Counted.Of(files, "file")} of the folder {Counted.Noun(files, "names", "name")} the student:",
            TraceFate.Untouched => $"{Counted.Of(files, "file")} of the folder {Counted.Noun(files, "names", "name")} the student and {Counted.Noun(files, "is", "are")} as {Counted.Noun(files, "it was", "they were")}. If you ask to have the student taken out of {Counted.Noun(files, "it", "them")}:",
        };
        return [head, .. Each(traces, fate).Select(group => $"  {group.Title}: {string.Join(", ", group.Files.Select(Shown))}")];
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
            (count => $"{Counted.Of(count, "file")} of the student’s alone {Done(count)} deleted", [.. traces.OfType<StudentTrace.Theirs>()]),
            (count => $"The student’s own rows {Done(2)} taken out of {Counted.Of(count, "table")}, and nothing else of {Counted.Noun(count, "it", "them")} touched", [.. traces.OfType<StudentTrace.Rows>()]),
            (count => $"{Counted.Of(count, "file")} made of the whole class {Done(count)} made anew without the student", [.. traces.OfType<StudentTrace.Anew>()]),
            (count => $"{Counted.Of(count, "file")} made of the whole class {Counted.Noun(count, "names", "name")} the student until {Counted.Noun(count, "it is", "they are")} made again or deleted", [.. traces.OfType<StudentTrace.MadeOfAll>()]),
            (count => $"{Counted.Of(count, "file")} of yours {Counted.Noun(count, "names", "name")} the student in other places and {Counted.Noun(count, "stays", "stay")} for you to change", [.. traces.OfType<StudentTrace.Stays>()]),
        }.Where(group => group.Files.Count > 0).Select(group => (group.Title(group.Files.Count), group.Files));
    }

    private static string Shown(StudentTrace trace) => trace switch
    {
        StudentTrace.Rows { Count: > 1 and var rows } => $"{trace.File} ({Counted.Of(rows, "row")})",
        StudentTrace.MadeOfAll(_, var kind) => $"{trace.File} (made by `{kind}`)",
        StudentTrace.Stays { Lines: { Count: > 0 } lines } => $"{trace.File} ({Places(lines)})",
        _ => trace.File,
    };

    /// <summary>Where in a file, as far as somebody would look it up.</summary>
    public static string Places(IReadOnlyList<int> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return lines.Count <= MostLines ? $"{Counted.Noun(lines.Count, "line", "lines")} {string.Join(", ", lines)}" : Counted.Of(lines.Count, "line");
    }
}
