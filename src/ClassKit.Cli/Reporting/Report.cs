using ClassKit.Content;
using ClassKit.UseCases;

namespace ClassKit.Cli;

/// <summary>Says what came of a use case, results on one stream and problems on the other, and picks the exit code.</summary>
internal sealed class Report
{
    private readonly TextWriter _problems;

    public Report(TextWriter output, TextWriter problems, TextWriter data)
    {
        Output = output;
        Data = data;
        _problems = problems;
    }

    /// <summary>Where results for people go.</summary>
    public TextWriter Output { get; }

    /// <summary>Where results for programs go, character by character.</summary>
    public TextWriter Data { get; }

    /// <summary>Makes a use case's files and writes them into a folder, all or none, and says so.</summary>
    public int Write(OutputTarget target, Func<Produced> make)
    {
        var written = OutputFolder.Write(target, make);
        if (written.IsCutOff) return Problems(written.Problems);
        if (!written.Succeeded) return NothingWritten(written.Problems);
        foreach (var note in written.Notes) Output.WriteLine(note);
        Output.WriteLine($"Written to {DisplayPath.Of(target.Folder)}: {written.Files} files.");
        return ExitCode.Done;
    }

    /// <summary>Says what would be written, and how to have it.</summary>
    public int Only(Produced produced, string how)
    {
        if (!produced.Succeeded) return NothingWritten(produced.Problems);
        foreach (var note in produced.Notes) Output.WriteLine(note);
        Output.WriteLine(how);
        return ExitCode.Done;
    }

    /// <summary>Lists problems.</summary>
    public int Problems(IReadOnlyList<Diagnostic> problems)
    {
        foreach (var problem in problems) _problems.WriteLine(problem);
        if (problems.Count > 1) _problems.WriteLine($"{problems.Count} problems.");
        return ExitCode.InputErrors;
    }

    private int NothingWritten(IReadOnlyList<Diagnostic> problems)
    {
        var exit = Problems(problems);
        _problems.WriteLine("Nothing was written.");
        return exit;
    }
}
