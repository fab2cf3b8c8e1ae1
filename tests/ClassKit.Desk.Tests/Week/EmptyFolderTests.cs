using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Week;

/// <summary>The desk opened on a folder in which nothing of ours lies.</summary>
public sealed class EmptyFolderTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    [Fact]
    public async Task An_empty_folder_is_begun_where_it_is_and_what_lies_in_it_stays()
    {
        var look = desk.Folder;
        var own = Directory.CreateTempSubdirectory("classkit-empty-").FullName;
        try
        {
            await File.WriteAllTextAsync(Path.Combine(own, "README.md"), "mine");
            Assert.Null(desk.Folders.Open(new(own)));
            var first = await desk.PageAsync("");
            Assert.Contains("Begin in this folder", first, StringComparison.Ordinal);
            Assert.Contains("Look round with the invented class", first, StringComparison.Ordinal);

            Assert.Equal(303, await desk.StatusAsync(desk.Request("begin-here", [])));
            Assert.Equal("mine", await File.ReadAllTextAsync(Path.Combine(own, "README.md")));
            Assert.Single(desk.Folder.Classes());
            Assert.Contains(desk.Folder.Lessons(), lesson => !lesson.IsShipped);
            Assert.Contains("Say who is in the class", await desk.PageAsync(""), StringComparison.Ordinal);
        }
        finally
        {
            Assert.Null(desk.Folders.Open(look));
            Directory.Delete(own, recursive: true);
        }
    }
}
