using System.Text.Json;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>
/// All that is to happen to an output folder. Once it lies whole in the work folder it will happen, if not by this run then by the next.
/// </summary>
/// <param name="Command">Which command is writing.</param>
/// <param name="Folders">Made if they are not there, outermost first.</param>
/// <param name="Asides">Files of ours that the instructor changed, and the free names under which they stay.</param>
/// <param name="Puts">Staged files and where they go.</param>
/// <param name="Removals">Files of ours that are of no use any more.</param>
/// <param name="Emptied">Folders that we made and have no file for any more, innermost first; removed if nothing is in them.</param>
internal sealed record Journal(
    string Command,
    IReadOnlyList<string> Folders,
    IReadOnlyList<Journal.Aside> Asides,
    IReadOnlyList<Journal.Put> Puts,
    IReadOnlyList<Journal.Removal> Removals,
    IReadOnlyList<string> Emptied
)
{
    internal sealed record Aside(string From, string To);

    /// <param name="Staged">The staged file's name.</param>
    /// <param name="Path">Where it goes.</param>
    /// <param name="Digest">The staged file's.</param>
    /// <param name="Over">The digest of the file of ours that it replaces; null where nothing stands.</param>
    internal sealed record Put(string Staged, string Path, string Digest, string? Over);

    internal sealed record Removal(string Path, string Digest);

    /// <exception cref="InvalidDataException">It is not as <see cref="Write"/> makes it, or leads out of the folder.</exception>
    public static Journal Read(string path)
    {
        try
        {
            var journal = JsonSerializer.Deserialize<Journal>(File.ReadAllText(path), JsonStyle.For(JournalShape.Default));
            if (journal is not null && journal.IsSound)
                return journal;
        }
        catch (JsonException)
        {
            // Said below.
        }
        throw new InvalidDataException($"{path} is not as ClassKit wrote it");
    }

    public void Write(Stream stream) => JsonStyle.Write(stream, this, JsonStyle.For(JournalShape.Default));

    private bool IsSound =>
        Folders
            .Concat(Emptied)
            .Concat(Asides.SelectMany(aside => (string[])[aside.From, aside.To]))
            .Concat(Removals.Select(removal => removal.Path))
            .All(OwnPath.IsSound)
        && Puts.All(put =>
            (OwnPath.IsSound(put.Path) || put.Path == OutputManifest.FileName) && put.Staged.Length > 0 && put.Staged.All(char.IsAsciiDigit)
        );
}
