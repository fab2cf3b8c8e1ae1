namespace ClassKit.UseCases.Tests.Samples;

/// <summary>A folder of a test's own, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("classkit-").FullName;

    public string Of(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    /// <summary>Writes a file, and the folders around it.</summary>
    public string Write(string path, byte[] content)
    {
        var file = Of(path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(file)!);
        File.WriteAllBytes(file, content);
        return file;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
