using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>A folder that a command writes twice.</summary>
internal sealed class OutputSample : IDisposable
{
    public const string Kind = "grade";

    public static IReadOnlyList<OutputFile> Old { get; } =
    [OutputFile.OfText("grades.csv", "old"), OutputFile.OfText("feedback/ada.html", "old")];

    public static IReadOnlyList<OutputFile> New { get; } =
    [OutputFile.OfText("grades.csv", "new"), OutputFile.OfText("feedback/ben.html", "new")];

    public TemporaryFolder Folder { get; } = new();

    public string Out => Folder.Of("out");

    public string Path(params string[] parts) => Folder.Of(["out", .. parts]);

    public Written WriteOld() => Write([.. Old]);

    public Written WriteNew() => Write([.. New]);

    public Written Write(params OutputFile[] files)
    {
        var written = OutputFolder.Write(Out, Kind, files);
        Assert.Empty(written.Problems);
        return written;
    }

    /// <summary>Every file but those that ClassKit keeps for itself, with its text.</summary>
    public IEnumerable<string> Content() => Everything().Where(file => !file.StartsWith(".classkit-", StringComparison.Ordinal));

    /// <summary>Every file with its text.</summary>
    public List<string> Everything() =>
        [
            .. Directory
                .EnumerateFiles(Out, "*", SearchOption.AllDirectories)
                .Select(path => $"{System.IO.Path.GetRelativePath(Out, path).Replace('\\', '/')}={File.ReadAllText(path)}")
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>What lies beside the folder, and itself.</summary>
    public IEnumerable<string?> Beside() => Directory.EnumerateFileSystemEntries(Folder.Path).Select(System.IO.Path.GetFileName);

    public void Dispose() => Folder.Dispose();
}
