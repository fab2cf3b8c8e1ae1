using ClassKit.Desk.Texts;

namespace ClassKit.Desk.Tests.Texts;

/// <summary>Several texts are kept together or not at all, and never over what somebody typed meanwhile.</summary>
public sealed class OwnTextsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("classkit-texts-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void All_are_written()
    {
        Assert.Null(OwnTexts.Write([Text("one.md"), Text("two.md")]));
        Assert.Equal(["new", "new"], Now("one.md", "two.md"));
    }

    [Fact]
    public void Where_one_was_changed_since_it_was_read_none_is_written()
    {
        NewText[] texts = [Text("one.md"), Text("two.md")];
        File.WriteAllText(Path.Combine(_folder, "two.md"), "typed meanwhile");

        Assert.Contains("changed meanwhile", OwnTexts.Write(texts)!.Found, StringComparison.Ordinal);
        Assert.Equal(["old", "typed meanwhile"], Now("one.md", "two.md"));
    }

    [Fact]
    public void Where_one_is_gone_none_is_written()
    {
        NewText[] texts = [Text("one.md"), Text("two.md")];
        File.Delete(Path.Combine(_folder, "two.md"));

        Assert.Equal(Path.Combine(_folder, "two.md"), OwnTexts.Write(texts)!.File);
        Assert.Equal(["old"], Now("one.md"));
    }

    /// <summary>The name under which a file is written before it takes the place of the old one is taken by a folder.</summary>
    [Fact]
    public void Where_one_cannot_be_written_none_is()
    {
        NewText[] texts = [Text("one.md"), Text("two.md")];
        Directory.CreateDirectory(Path.Combine(_folder, ".two.md.new"));

        Assert.Contains("could not be written", OwnTexts.Write(texts)!.Found, StringComparison.Ordinal);
        Assert.Equal(["old", "old"], Now("one.md", "two.md"));
    }

    private NewText Text(string name)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, "old");
        return new(path, OwnText.Read(path), "new");
    }

    private IEnumerable<string> Now(params string[] names) => names.Select(name => File.ReadAllText(Path.Combine(_folder, name)));
}
