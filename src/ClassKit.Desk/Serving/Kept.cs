using System.Collections.Concurrent;

namespace ClassKit.Desk.Serving;

/// <summary>Results that are kept in memory as long as the files that they were made of are as they were.</summary>
internal sealed class Kept
{
    private const int Most = 40;

    private readonly ConcurrentDictionary<string, (string Stamp, object Result)> _results = new(StringComparer.Ordinal);

    /// <summary>A result that still holds; null if there is none.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="stamp">How the files are now; see <see cref="StampOf"/>.</param>
    public T? Get<T>(string name, string stamp)
        where T : class => _results.TryGetValue(name, out var known) && known.Stamp == stamp ? known.Result as T : null;

    /// <summary>Keeps a result.</summary>
    public T Put<T>(string name, string stamp, T result)
        where T : class
    {
        if (_results.Count >= Most) _results.Clear();
        _results[name] = (stamp, result);
        return result;
    }

    /// <summary>A result that still holds, made if there is none.</summary>
    public T Get<T>(string name, string stamp, Func<T> make)
        where T : class => Get<T>(name, stamp) ?? Put(name, stamp, make());

    /// <summary>How files are: a text that changes when one of them does. What ships never changes.</summary>
    public static string StampOf(params IEnumerable<string> paths) => string.Join('|', paths.SelectMany(Files).Select(file => $"{file.FullName} {file.Length} {file.LastWriteTimeUtc.Ticks}"));

    private static IEnumerable<FileInfo> Files(string path) =>
        File.Exists(path) ? [new FileInfo(path)]
        : Directory.Exists(path) ? new DirectoryInfo(path).EnumerateFiles("*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint }).OrderBy(file => file.FullName, StringComparer.Ordinal)
        : [];
}
