using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Folders;

/// <summary>Which folder a desk is opened on, held against a second desk for as long as it is.</summary>
internal sealed class FolderHolder : IDisposable
{
    /// <summary>The file that an open desk holds.</summary>
    public const string LockName = ".classkit-desk";

    private readonly Lock _changing = new();
    private readonly List<TeachingFolder> _opened = [];
    private WriterLock? _lock;
    private TeachingFolder? _folder;

    /// <summary>The folder; null before one was chosen.</summary>
    public TeachingFolder? Current
    {
        get
        {
            lock (_changing)
                return _folder;
        }
    }

    /// <summary>Every folder that it was opened on, each once: whoever went on from one can come back to it.</summary>
    public IReadOnlyList<TeachingFolder> Opened
    {
        get
        {
            lock (_changing)
                return [.. _opened];
        }
    }

    /// <summary>
    /// The folder that the desk was to be opened on and that is not there, in full: the first page offers to begin it. Null for none.
    /// </summary>
    public string? Missing { get; init; }

    /// <summary>Opens the desk on a folder, and lets go of the one before.</summary>
    /// <returns>Why not; null if it is open now.</returns>
    public Diagnostic? Open(TeachingFolder folder)
    {
        try
        {
            lock (_changing)
            {
                if (WriterLock.TryTake(folder.Root, LockName) is not { } taken)
                    return new(
                        folder.Root,
                        null,
                        "Another desk is open on this folder",
                        "Go back to the browser window in which it is open, or close it first: two desks on one folder would write over each other."
                    );
                _lock?.Dispose();
                (_lock, _folder) = (taken, folder);
                if (!_opened.Contains(folder))
                    _opened.Add(folder);
                return null;
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(
                folder.Root,
                null,
                $"The folder cannot be used: {failure.Message}",
                "Choose a folder of your own in which you may write."
            );
        }
    }

    /// <summary>Gives the folder back; what was made for a look round goes away.</summary>
    public void Dispose()
    {
        lock (_changing)
        {
            _lock?.Dispose();
            foreach (var folder in _opened.Where(folder => folder.IsLookRound && Directory.Exists(folder.Root)))
                GiveBack(folder.Root);
        }
    }

    private static void GiveBack(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // A program has a file of it open, or another desk takes it away at this moment; the next look round does it otherwise.
        }
    }
}
