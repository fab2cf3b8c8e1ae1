using System.Text;

namespace ClassKit.UseCases.Output;

/// <summary>One file of an output folder, made when it is written, so that a class's files are never all in memory.</summary>
public sealed class OutputFile
{
    private readonly Action<Stream> _write;

    /// <summary>A file that is made when it is written.</summary>
    /// <param name="path">Within the folder, with forward slashes.</param>
    /// <param name="write">Writes the same bytes each time.</param>
    public OutputFile(string path, Action<Stream> write) => (Path, _write) = (path, write);

    /// <summary>A file whose bytes are at hand.</summary>
    public OutputFile(string path, byte[] content)
        : this(path, stream => stream.Write(content)) { }

    /// <summary>Where it goes within the folder, with forward slashes.</summary>
    public string Path { get; }

    /// <summary>True where making it takes so much memory that two such files of a folder are not made at once.</summary>
    public bool IsLarge { get; init; }

    /// <summary>Its bytes, made anew each time they are asked for.</summary>
    public byte[] Content
    {
        get
        {
            using var stream = new MemoryStream();
            WriteTo(stream);
            return stream.ToArray();
        }
    }

    /// <summary>A text file in UTF-8 without a byte order mark.</summary>
    public static OutputFile OfText(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    /// <summary>A text file whose text is made when it is written.</summary>
    public static OutputFile OfText(string path, Func<string> text) => new(path, stream => stream.Write(Encoding.UTF8.GetBytes(text())));

    /// <summary>A text made piece by piece while it is written.</summary>
    public static OutputFile OfPieces(string path, Func<IEnumerable<string>> pieces) => new(path, stream =>
        {
            foreach (var piece in pieces())
                stream.Write(Encoding.UTF8.GetBytes(piece));
        });

    /// <summary>Makes the file.</summary>
    public void WriteTo(Stream stream) => _write(stream);

    /// <summary>The same file below a folder.</summary>
    public OutputFile Below(string folder) => new($"{folder}/{Path}", _write) { IsLarge = IsLarge };
}
