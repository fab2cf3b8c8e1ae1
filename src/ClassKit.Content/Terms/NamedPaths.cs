using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Terms;

/// <summary>Follows the paths that a term's file names, and gathers what is wrong with what they lead to.</summary>
internal sealed class NamedPaths(Source file, ProblemList term)
{
    private readonly List<string> _paths = [];
    private readonly List<Diagnostic> _problems = [];
    private readonly List<Diagnostic> _doubts = [];

    public IReadOnlyList<string> Paths => _paths;

    /// <summary>What is wrong with the files themselves.</summary>
    public IReadOnlyList<Diagnostic> Problems => _problems;

    /// <summary>What stands in nobody's way there, and is doubtful.</summary>
    public IReadOnlyList<Diagnostic> Doubts => _doubts;

    /// <summary>What a path leads to; null where there is none or it cannot be read.</summary>
    public T? Read<T>(Located? named, Func<Source, Reading<T>> read)
        where T : class
    {
        if (named is not { Text.Length: > 0 } text || Find(text, isFolder: false) is not { } found)
            return null;
        var reading = read(found);
        _problems.AddRange(reading.Problems);
        _doubts.AddRange(reading.Doubts);
        return reading.Model;
    }

    /// <summary>The file that a path leads to; null where there is none, which is said where it is read.</summary>
    public string? File(Located named) => named.Text.Length > 0 && Beside(named) is { IsFile: true } found ? found.Path : null;

    /// <summary>The folder that a path leads to; null where there is none.</summary>
    public string? Folder(Located named) => named.Text.Length == 0 ? null : Find(named, isFolder: true)?.Path;

    private Source Beside(Located named) => file.At(ContentPath.Beside(term.File, named.Text));

    private Source? Find(Located named, bool isFolder)
    {
        var found = Beside(named);
        if (isFolder ? found.IsFolder : found.IsFile)
        {
            _paths.Add(found.Path);
            return found;
        }
        var (what, nearby) = isFolder ? ("folder", Nearby.Folders(found)) : ("file", Nearby.Files(found));
        term.Add(
            named.Line,
            $"There is no {what} `{found.Path}`",
            nearby ?? "Check the spelling; paths begin at the file that holds them."
        );
        return null;
    }
}
