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

    /// <summary>Much may be worked out between looking and writing; whoever saved the file meanwhile keeps what they wrote.</summary>
    [Fact]
    public void What_was_saved_after_it_was_read_is_not_written_over()
    {
        var seen = Text("one.md").Before!;
        File.WriteAllText(seen.Path, "saved meanwhile");

        Assert.Contains("changed meanwhile", seen.Write(seen.Stamp, "new"u8.ToArray())!.Found, StringComparison.Ordinal);
        Assert.Equal(["saved meanwhile"], Now("one.md"));
    }

    /// <summary>A double click sends one form twice, and both are answered at once.</summary>
    [Fact]
    public void A_file_that_is_written_many_times_at_once_is_one_of_them_whole()
    {
        var path = Path.Combine(_folder, "one.md");
        var texts = Enumerable.Range(0, 40).Select(number => new string((char)('a' + number % 26), 20_000)).ToList();

        Parallel.ForEach(texts, text => UseCases.Output.Writing.WholeFile.Write(path, System.Text.Encoding.UTF8.GetBytes(text)));

        Assert.Contains(File.ReadAllText(path), texts);
        Assert.Equal(["one.md"], Directory.EnumerateFiles(_folder).Select(Path.GetFileName));
    }

    private NewText Text(string name)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, "old");
        return new(path, OwnText.Read(path), "new");
    }

    private IEnumerable<string> Now(params string[] names) => names.Select(name => File.ReadAllText(Path.Combine(_folder, name)));
}
