using System.Text;

namespace ClassKit.UseCases;

/// <summary>One file of an output folder.</summary>
/// <param name="Path">Within the folder, with forward slashes.</param>
/// <param name="Content">Its bytes.</param>
public sealed record OutputFile(string Path, byte[] Content)
{
    /// <summary>A text file in UTF-8 without a byte order mark.</summary>
    public static OutputFile OfText(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    /// <summary>The same file below a folder.</summary>
    public OutputFile Below(string folder) => this with { Path = $"{folder}/{Path}" };
}
