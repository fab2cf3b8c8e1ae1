using System.Text;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Output;

/// <summary>Several files get other names, or none does.</summary>
public sealed class FileMovesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Where_one_cannot_be_moved_those_before_it_go_back()
    {
        foreach (var name in (string[])["a", "b", "taken"])
            _folder.Write(name, Encoding.UTF8.GetBytes(name));

        Assert.ThrowsAny<IOException>(() =>
            FileMoves.All([
                (_folder.Of("a"), _folder.Of("before")),
                (_folder.Of("b"), _folder.Of("a")),
                (_folder.Of("a"), _folder.Of("taken")),
            ])
        );
        Assert.Equal(["a a", "b b", "taken taken"], Content());

        FileMoves.All([(_folder.Of("a"), _folder.Of("before")), (_folder.Of("b"), _folder.Of("a"))]);
        Assert.Equal(["a b", "before a", "taken taken"], Content());
    }

    private IEnumerable<string> Content() =>
        Directory
            .EnumerateFiles(_folder.Path)
            .Order(StringComparer.Ordinal)
            .Select(file => $"{Path.GetFileName(file)} {File.ReadAllText(file)}");
}
