using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Tests.Folders;

/// <summary>A lesson is called by its first heading, and by no remark.</summary>
public sealed class LessonEntryTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("classkit-lesson-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("---\n# How long it takes\nminutes: 90\n---\n\n# Milk Scones\n", "Milk Scones")]
    [InlineData("# Milk Scones\n\n---\n\n# Later\n", "Milk Scones")]
    [InlineData("Text\n---\n# Milk Scones\n", "Milk Scones")]
    public void The_first_heading_names_it(string text, string title)
    {
        File.WriteAllText(Path.Combine(_folder, "lesson.md"), text);
        Assert.Equal(title, LessonEntry.Of("key", _folder).Title);
    }
}
