using ClassKit.Content.Recognition;
using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Tests.Folders;

/// <summary>Paths that come to one plain word: each is still found by a key of its own.</summary>
public sealed class OneKeyTests : IDisposable
{
    private const string Profile = "---\nstudents: 4\nteams: 2\npieces per team: 6\nperiod: 150 min\novens: 1\n---\n\n# ";

    private readonly string _folder = Directory.CreateTempSubdirectory("classkit-keys-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("class 1.md", "class-1.md")]
    [InlineData("class(1).md", "class 1.md")]
    [InlineData("a/b.md", "a.b.md")]
    public void Two_files_are_told_apart(string one, string other)
    {
        foreach (var file in new[] { one, other })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, file))!);
            File.WriteAllText(Path.Combine(_folder, file), Profile + file + "\n");
        }
        var folder = new TeachingFolder(_folder);

        Assert.Equal([Full(one), Full(other)], new[] { one, other }.Select(file => folder.Class(KeyOfClass(folder, file))?.File));
        Assert.Equal(2, folder.Texts().Select(text => text.Key).Distinct().Count());
        Assert.NotEqual(
            folder.RoundPlace(folder.Class(KeyOfClass(folder, one))!, "01-x"),
            folder.RoundPlace(folder.Class(KeyOfClass(folder, other))!, "01-x")
        );
    }

    [Fact]
    public void What_needs_no_digits_has_none()
    {
        File.WriteAllText(Path.Combine(_folder, "class 1.md"), Profile + "One\n");
        File.WriteAllText(Path.Combine(_folder, "class-1.md"), Profile + "Other\n");

        Assert.Equal(Full("class-1.md"), new TeachingFolder(_folder).Class("class-1")?.File);
    }

    [Fact]
    public void Two_rubrics_are_told_apart()
    {
        string[] files = ["bench 1.md", "bench-1.md"];
        foreach (var file in files)
            File.Copy(Repository.PathOf("rubrics/bench-work.md"), Path.Combine(_folder, file));
        var folder = new TeachingFolder(_folder);

        var keys = folder.Keyed(ContentKind.PracticalRubric).ToDictionary(item => item.Path, item => item.Key);
        Assert.Equal(files.Select(Full), files.Select(file => folder.PathOf(ContentKind.PracticalRubric, keys[Full(file)])));
        Assert.Null(folder.PathOf(ContentKind.GradeRule, keys[Full(files[0])]));
    }

    private string Full(string file) => Path.GetFullPath(file, _folder);

    private string KeyOfClass(TeachingFolder folder, string file) => folder.Classes().Single(entry => entry.File == Full(file)).Key;
}
