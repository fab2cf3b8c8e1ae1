using System.Collections.Concurrent;

namespace ClassKit.Desk.Serving;

/// <summary>Results that are kept in memory as long as the files that they were made of are as they were.</summary>
internal sealed class Kept
{
    /// <summary>Results that can be made again; beyond these the one that was asked for longest ago goes.</summary>
    private const int Most = 40;

    private readonly ConcurrentDictionary<string, (string Stamp, object Result, long Asked)> _results = new(StringComparer.Ordinal);

    private readonly ConcurrentDictionary<string, (string Stamp, object Draft, long Number)> _drafts = new(StringComparer.Ordinal);

    private long _asked;

    private long _begun;

    /// <summary>A result that still holds; null if there is none.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="stamp">How the files are now; see <see cref="StampOf"/>.</param>
    public T? Get<T>(string name, string stamp)
        where T : class
    {
        if (!_results.TryGetValue(name, out var known) || known.Stamp != stamp)
            return null;
        _results.TryUpdate(name, known with { Asked = Interlocked.Increment(ref _asked) }, known);
        return known.Result as T;
    }

    /// <summary>Keeps a result.</summary>
    public T Put<T>(string name, string stamp, T result)
        where T : class
    {
        _results[name] = (stamp, result, Interlocked.Increment(ref _asked));
        while (_results.Count > Most)
            _results.TryRemove(_results.MinBy(one => one.Value.Asked).Key, out _);
        return result;
    }

    /// <summary>
    /// What the instructor is in the middle of and nothing else holds: it stays until another of its name takes its place. There are a few
    /// of them a class.
    /// </summary>
    /// <param name="name">What it is.</param>
    /// <param name="stamp">How the files are that it is about.</param>
    /// <param name="draft">What was begun.</param>
    public void Begin(string name, string stamp, object draft) => _drafts[name] = (stamp, draft, Interlocked.Increment(ref _begun));

    /// <summary>
    /// What tells this draft from every other of its name: a page that shows it sends it along, so that what another window began meanwhile
    /// is never taken for it. Empty if nothing was begun.
    /// </summary>
    public string KeyOf(string name) =>
        _drafts.TryGetValue(name, out var known) ? known.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) : "";

    /// <summary>What was begun; null if nothing was, or the files are no longer as they were.</summary>
    public T? Begun<T>(string name, string stamp)
        where T : class => _drafts.TryGetValue(name, out var known) && known.Stamp == stamp ? known.Draft as T : null;

    /// <summary>A result that still holds, made if there is none.</summary>
    public T Get<T>(string name, string stamp, Func<T> make)
        where T : class => Get<T>(name, stamp) ?? Put(name, stamp, make());

    /// <summary>How files are: a text that changes when one of them does. What ships never changes.</summary>
    public static string StampOf(params IEnumerable<string> paths) =>
        string.Join('|', paths.SelectMany(Files).Select(file => $"{file.FullName} {file.Length} {file.LastWriteTimeUtc.Ticks}"));

    private static IEnumerable<FileInfo> Files(string path) =>
        File.Exists(path) ? [new FileInfo(path)]
        : Directory.Exists(path)
            ? new DirectoryInfo(path)
                .EnumerateFiles(
                    "*",
                    new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint }
                )
                .OrderBy(file => file.FullName, StringComparer.Ordinal)
        : [];
}
