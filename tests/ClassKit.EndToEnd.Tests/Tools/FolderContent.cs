using System.Security.Cryptography;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>What is in a folder, file by file.</summary>
internal static class FolderContent
{
    /// <summary>Every file below the folder with the digest of its bytes.</summary>
    public static SortedDictionary<string, string> Digests(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(
            path => Path.GetRelativePath(folder, path).Replace('\\', '/'),
            path => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path)))),
        StringComparer.Ordinal);
}
