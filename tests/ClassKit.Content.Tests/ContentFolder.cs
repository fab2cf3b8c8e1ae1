namespace ClassKit.Content.Tests;

/// <summary>A folder for the files of one test, gone afterwards.</summary>
internal sealed class ContentFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("classkit-content-");

    public string Path => _folder.FullName;

    public string Write(string name, string text)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public string WriteBytes(string name, byte[] bytes)
    {
        var path = System.IO.Path.Combine(Path, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>A copy of a shipped folder, to be broken.</summary>
    public string Copy(string from, string name)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
            Write(System.IO.Path.Combine(name, System.IO.Path.GetRelativePath(from, file)), File.ReadAllText(file));
        return System.IO.Path.Combine(Path, name);
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
