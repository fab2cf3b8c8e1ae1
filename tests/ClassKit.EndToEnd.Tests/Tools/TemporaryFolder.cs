namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>A folder of a test's own, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("classkit-").FullName;

    public string Of(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
