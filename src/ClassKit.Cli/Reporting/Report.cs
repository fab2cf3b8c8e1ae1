using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Notes;

namespace ClassKit.Cli.Reporting;

/// <summary>Says what came of a use case, results on one stream and problems on the other, and picks the exit code.</summary>
internal sealed class Report
{
    private readonly TextWriter _problems;
    private readonly Watching _watching;

    public Report(TextWriter output, TextWriter problems, TextWriter data, Watching watching)
    {
        Output = output;
        Data = data;
        _problems = problems;
        _watching = watching;
    }

    /// <summary>Where results for people go.</summary>
    public TextWriter Output { get; }

    /// <summary>Where results for programs go, character by character.</summary>
    public TextWriter Data { get; }

    /// <summary>Where problems go.</summary>
    public TextWriter Errors => _problems;

    /// <summary>Asks to stop.</summary>
    public CancellationToken Stopping => _watching.Cancellation;

    /// <summary>Makes a use case's files and writes them into a folder, all or none, and says so.</summary>
    public int Write(OutputTarget target, Func<Run, Produced> make)
    {
        var written = _watching.During(run => OutputFolder.Write(target, () => make(run), run));
        if (written.IsCutOff)
            return Problems(written.Problems);
        if (!written.Succeeded)
            return NothingWritten(written.Problems);
        foreach (var line in written.Notes.SelectMany(NoteWords.Of))
            Output.WriteLine(line);
        foreach (var remedy in written.Remedies)
            Output.WriteLine(RemedyWords.Of(remedy));
        Output.WriteLine($"Written to {DisplayPath.Whole(target.Folder)}: {Counted.Of(written.Files, "file")}.");
        if (written.Open is [var first])
            Output.WriteLine($"Open {first}");
        return ExitCode.Done;
    }

    /// <summary>Says what was done where no files of ours are made.</summary>
    public int Done(Func<Run, Produced> work)
    {
        var done = Watch(work);
        if (!done.Succeeded)
            return Problems(done.Problems);
        foreach (var line in done.Notes.SelectMany(NoteWords.Of))
            Output.WriteLine(line);
        return ExitCode.Done;
    }

    /// <summary>Says what would be written, and how to have it where there is something to write.</summary>
    public int Only(Func<Run, Produced> make, string how, Func<Note, bool>? isNothing = null)
    {
        var produced = Watch(make);
        if (!produced.Succeeded)
            return NothingWritten(produced.Problems);
        foreach (var line in produced.Notes.SelectMany(NoteWords.Of))
            Output.WriteLine(line);
        foreach (var remedy in produced.Remedies)
            Output.WriteLine(RemedyWords.Of(remedy));
        if (isNothing is null || !produced.Notes.Any(isNothing))
            Output.WriteLine(how);
        return ExitCode.Done;
    }

    /// <summary>Works while the user looks on.</summary>
    public T Watch<T>(Func<Run, T> work) => _watching.During(work);

    /// <summary>Lists problems.</summary>
    public int Problems(IReadOnlyList<Diagnostic> problems)
    {
        problems = [.. problems.Distinct()];
        foreach (var problem in problems)
            _problems.WriteLine(RemedyWords.Of(problem));
        if (problems.Count > 1)
            _problems.WriteLine($"{problems.Count} problems.");
        return ExitCode.InputErrors;
    }

    private int NothingWritten(IReadOnlyList<Diagnostic> problems)
    {
        var exit = Problems(problems);
        _problems.WriteLine("Nothing was written.");
        return exit;
    }
}
