using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Tests.Folders;

public sealed class LessonEntryTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("classkit-lesson-");

    public void Dispose() => _folder.Delete(recursive: true);

    /// <summary>The lesson that a new folder begins with says in remarks what its lines mean.</summary>
    [Theory]
    [InlineData("---\n# How long it takes.\nminutes: 90\n---\n\n# Milk Scones\n\n## Notes\n", "Milk Scones")]
    [InlineData("# Milk Scones\n", "Milk Scones")]
    [InlineData("---\n# How long it takes.\nminutes: 90\n---\n\nNo heading.\n", null)]
    public void It_is_called_by_its_heading_and_by_no_remark(string text, string? title)
    {
        File.WriteAllText(Path.Combine(_folder.FullName, "lesson.md"), text);

        Assert.Equal(title ?? _folder.Name, LessonEntry.Of("own", _folder.FullName).Title);
    }
}
