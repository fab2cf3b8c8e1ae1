using System.IO.Compression;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Notes;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.UseCases.Handing;

/// <summary>
/// Opens what <see cref="HandOverLesson"/> made, or anybody said it did: within the limits of what comes back from a class, and only what a
/// lesson leads to.
/// </summary>
public static class ReceiveLesson
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "receive";

    /// <summary>The files with a check of them, or why there are none.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<Received> Run(ReceiveRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.ReadingContent);
        var (files, notBrought, problem) = Guarded.Of(
            () => Entries(request.Bundle),
            _ => ([], [], Broken(request.Bundle, "It is no zip that can be opened"))
        );
        if (problem is not null)
            return new(null, [problem]);
        if (files.Count == 0)
            return new(null, [Broken(request.Bundle, "Nothing in it belongs to a lesson")]);
        var check = CheckContent.Run(new(new(ListedTree.InMemory(files)), [""]), run);
        return new(new([.. files.Select(file => new OutputFile(file.Key, file.Value))], notBrought, check), []);
    }

    /// <summary>The files, into a folder in which there is nothing yet.</summary>
    public static Produced Write(Received received)
    {
        ArgumentNullException.ThrowIfNull(received);
        return new(received.Files, [new Note.Received([.. received.Files.Select(file => file.Path)], received.NotBrought)], [])
        {
            Objection = NewFolder.Objection,
        };
    }

    private static (IReadOnlyList<KeyValuePair<string, byte[]>> Files, IReadOnlyList<string> NotBrought, Diagnostic? Problem) Entries(
        Upload bundle
    )
    {
        using var stream = bundle.Open();
        if (BoundedBytes.Read(stream, IntakeLimits.FileBytes) is not { } bytes)
            return ([], [], Broken(bundle, "It is larger than 50 MB"));
        if (!ZipDirectory.IsWithin(bytes, IntakeLimits.Entries, IntakeLimits.DirectoryBytes))
            return ([], [], Broken(bundle, $"It holds more than {IntakeLimits.Entries} files"));
        using var zip = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read, leaveOpen: false, ZipNames.Instance);
        var budget = ArchiveBudget.Bounded;
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var notBrought = new List<string>();
        var names = new EntryNames();
        foreach (var entry in zip.Entries.Where(entry => !entry.FullName.EndsWith('/')))
        {
            var shown = names.Shown(entry.FullName);
            if (
                BundleName.IsOfLesson(entry.FullName)
                && taken.Add(entry.FullName)
                && ZipEntryBytes.Read(entry, shown, budget).Content is { } content
            )
                files[entry.FullName] = content;
            else
                notBrought.Add(shown);
        }
        return ([.. files], notBrought, null);
    }

    private static Diagnostic Broken(Upload bundle, string found) =>
        new(bundle.Path, null, found, "Name the file that `hand-over` made; ask for it again if it was damaged on the way.");
}
