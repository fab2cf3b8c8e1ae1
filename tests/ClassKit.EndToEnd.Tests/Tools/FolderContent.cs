using System.Security.Cryptography;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>What is in a folder, file by file.</summary>
internal static class FolderContent
{
    /// <summary>Every file below the folder with the digest of its bytes.</summary>
    public static SortedDictionary<string, string> Digests(string folder) => Digests(folder, _ => true);

    /// <summary>Every such file below the folder with the digest of its bytes.</summary>
    public static SortedDictionary<string, string> Digests(string folder, Func<string, bool> isOne) =>
        new(
            Directory
                .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                .Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/'))
                .Where(isOne)
                .ToDictionary(path => path, path => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(Path.Combine(folder, path))))),
            StringComparer.Ordinal
        );

    /// <summary>Copies every file below a folder.</summary>
    public static void Copy(string source, string target)
    {
        foreach (var file in Directory.EnumerateFiles(source, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(target, Path.GetRelativePath(source, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
