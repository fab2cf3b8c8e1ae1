using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Serving;
using ClassKit.Records.Classes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Names;

/// <summary>What the record of the folder knows of a class's names: a class that is renamed keeps its history.</summary>
internal static class NameOnRecord
{
    /// <summary>What the class is called today that was called so before; null where none was.</summary>
    public static string? LaterNameOf(Visit visit, string name)
    {
        if (!File.Exists(RecordPlace.Of(visit.Folder.Root)))
            return null;
        using var record = RecordPlace.Open(visit.Folder.Root, visit.Desk.Now, mayBegin: false).Model;
        return record?.Read(session => ClassRegister.Find(session, name)) is { } found && found.Name != name ? found.Name : null;
    }

    /// <summary>
    /// Tells the record that a class is called otherwise. This comes before the class's file is written: the record knows a class by its
    /// earlier names, too, so that nothing is lost should the file not be written then.
    /// </summary>
    /// <returns>Why it cannot be called so; empty where it can.</returns>
    public static IReadOnlyList<Diagnostic> Change(Visit visit, string? before, string? now)
    {
        if (before is null || now is null || before == now || !File.Exists(RecordPlace.Of(visit.Folder.Root)))
            return [];
        var author = visit.Author("");
        return Produced
            .Within(RecordPlace.Open(visit.Folder.Root, author.Now, mayBegin: false), record =>
                new([], [], RenameClass.Run(new(record, author, before, now), Run.Unwatched).Problems)
            )
            .Problems;
    }
}
