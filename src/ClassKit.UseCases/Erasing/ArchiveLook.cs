using ClassKit.UseCases.Intake;

namespace ClassKit.UseCases.Erasing;

/// <summary>Looks through an archive file by file, and takes the student out of it.</summary>
internal static class ArchiveLook
{
    /// <summary>What it holds of the student; null for bytes that are no archive, and for one that is too deep in others.</summary>
    /// <param name="bytes">The archive.</param>
    /// <param name="around">The look at what it lies in.</param>
    public static ArchiveTrace? Of(byte[] bytes, StudentLook around)
    {
        if (around.Depth == IntakeLimits.Depth || FilesOfArchive.Open(bytes) is not { } files)
            return null;
        var look = around.Into(files);
        var changes = new Dictionary<string, byte[]?>(StringComparer.Ordinal);
        List<string> still = [],
            unread = [];
        var (gone, tables) = (0, 0);
        foreach (var name in files.Names)
        {
            if (look.IsTheirs(name, name.Replace('\\', '/')))
            {
                changes[name] = null;
                gone++;
            }
            else if (look.Archive(name) is { } inner)
            {
                if (inner.Left is { } left)
                {
                    changes[name] = left;
                    (gone, tables) = (gone + inner.Files, tables + inner.Tables);
                }
                else if (inner.Files + inner.Tables > 0)
                {
                    // It cannot be written anew: what is the student's in it stays with it.
                    still.Add(name);
                }
                still.AddRange(inner.Still.Select(file => $"{name}/{file}"));
                unread.AddRange(inner.Unread.Select(file => $"{name}/{file}"));
            }
            else if (look.Rows(name) is var (rest, _))
            {
                changes[name] = rest;
                tables++;
                if (look.IsStillNamed(name, rest))
                    still.Add(name);
            }
            else if (look.Lines(name) is not null)
                still.Add(name);
            else if (look.IsUnread(name))
                unread.Add(name);
        }
        return new(changes.Count > 0 ? files.With(changes) : null, gone, tables, still, unread);
    }
}
