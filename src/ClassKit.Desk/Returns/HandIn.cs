using System.Security.Cryptography;
using ClassKit.Desk.Safety;

namespace ClassKit.Desk.Returns;

/// <summary>
/// Keeps what was handed in, in the folder of the round. Nothing that lies there is ever replaced: another file of the same name lies
/// beside it.
/// </summary>
internal static class HandIn
{
    /// <summary>Of one step of a name, beside those of others that differ.</summary>
    private const int MostAlike = 1_000;

    /// <summary>
    /// Away from Windows a move that is not to overwrite looks first and renames then: of two in the same moment one would take the other's
    /// place. One desk holds a folder, so that its own lock is enough.
    /// </summary>
    private static readonly Lock Placing = new();

    /// <summary>Takes files in as they come.</summary>
    /// <param name="folder">Where a file lies until it is whole.</param>
    /// <param name="into">Where it lies then.</param>
    /// <param name="files">What is sent.</param>
    /// <param name="cancellation">Nobody waits any more.</param>
    /// <exception cref="IOException">The folder is not there any more.</exception>
    public static async Task<HandedIn> TakeAsync(string folder, string into, SentFiles files, CancellationToken cancellation)
    {
        // Two may be handing in at once, from two tabs or by a double click: each has a folder of its own, which nobody else clears away.
        var work = Path.Combine(folder, ".incoming", RandomNumberGenerator.GetHexString(16));
        lock (Placing)
            Directory.CreateDirectory(work);
        Directory.CreateDirectory(into);
        var part = Path.Combine(work, "part");
        var count = 0;
        try
        {
            await using var sent = files.Each(cancellation).GetAsyncEnumerator(cancellation);
            while (true)
            {
                var isThere = await FromBrowser(sent.MoveNextAsync);
                if (isThere == false)
                    return new HandedIn.Whole(count);
                if (isThere is null || !await CopyAsync(sent.Current.Content, part, cancellation))
                    return new HandedIn.BrokenOff(count);
                if (Keep(part, into, HandedInName.Of(sent.Current.Name)))
                    count++;
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException && Directory.Exists(folder))
        {
            return new HandedIn.NotWritten(count, failure.Message);
        }
        finally
        {
            Clear(part, work);
        }
    }

    /// <returns>False if what was sent broke off.</returns>
    /// <exception cref="IOException">It could not be written.</exception>
    private static async Task<bool> CopyAsync(Stream content, string to, CancellationToken cancellation)
    {
        await using var file = File.Create(to);
        var bytes = new byte[1 << 16];
        while (true)
        {
            if (await FromBrowser(() => content.ReadAsync(bytes, cancellation)) is not { } length)
                return false;
            if (length == 0)
                return true;
            await file.WriteAsync(bytes.AsMemory(0, length), CancellationToken.None);
        }
    }

    /// <summary>What a browser sends, which may end in many ways; null if it did.</summary>
    private static async Task<T?> FromBrowser<T>(Func<ValueTask<T>> read)
        where T : struct
    {
        try
        {
            return await read();
        }
        catch (Exception failure) when (failure is IOException or InvalidDataException or OperationCanceledException)
        {
            return null;
        }
    }

    /// <summary>What is left of a file that broke off goes, and the folder with the last of them; neither may hide what happened.</summary>
    private static void Clear(string part, string work)
    {
        try
        {
            File.Delete(part);
            lock (Placing)
            {
                Directory.Delete(work);
                if (Path.GetDirectoryName(work) is { } all && !Directory.EnumerateFileSystemEntries(all).Any())
                    Directory.Delete(all);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Another is still at it, or its program holds it: what lies in there is never taken for something handed in.
        }
    }

    /// <summary>Keeps a file that is whole.</summary>
    /// <returns>False if the very same lies there already, and only then: whoever is told so may take the file away.</returns>
    /// <exception cref="IOException">It could not be put there, or too many others of its name are there.</exception>
    public static bool Keep(string file, string folder, string name)
    {
        lock (Placing)
            return Place(file, folder, name);
    }

    private static bool Place(string file, string folder, string name)
    {
        for (var number = 1; number <= MostAlike; number++)
        {
            var to = Path.Combine(folder, number == 1 ? name : $"{Path.ChangeExtension(name, null)} ({number}){Path.GetExtension(name)}");
            if (File.Exists(to))
            {
                if (IsSame(file, to))
                    return false;
            }
            else if (!Directory.Exists(to))
            {
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                if (Moved(file, to))
                    return true;
                if (IsSame(file, to))
                    return false;
            }
        }
        throw new IOException($"{MostAlike} other files of that name lie there already.");
    }

    /// <summary>False if another was put there this very moment.</summary>
    private static bool Moved(string file, string to)
    {
        try
        {
            File.Move(file, to, overwrite: false);
            return true;
        }
        catch (IOException) when (File.Exists(to))
        {
            return false;
        }
    }

    private static bool IsSame(string one, string other)
    {
        if (new FileInfo(one).Length != new FileInfo(other).Length)
            return false;
        using var first = File.OpenRead(one);
        using var second = File.OpenRead(other);
        return SHA256.HashData(first).AsSpan().SequenceEqual(SHA256.HashData(second));
    }
}
