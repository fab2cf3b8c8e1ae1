using ClassKit.Desk.Folders;
using ClassKit.Desk.Week;

namespace ClassKit.Desk.Tests.Week;

/// <summary>Which folders the first page offers to go on with.</summary>
public sealed class KnownFolderTests : IDisposable
{
    private readonly string _place = Directory.CreateTempSubdirectory("classkit-places-").FullName;

    public void Dispose() => Directory.Delete(_place, recursive: true);

    [Fact]
    public void A_folder_with_a_class_or_a_desk_before_is_known_once_and_no_other()
    {
        foreach (
            var file in new[]
            {
                "Tuesdays/class.md",
                $"Begun/{FolderHolder.LockName}",
                "Recipes/bread.md",
                ".hidden/class.md",
                "Deep/Down/class.md",
            }
        )
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_place, file))!);
            File.WriteAllText(Path.Combine(_place, file), "");
        }
        if (!OperatingSystem.IsWindows())
            Directory.CreateSymbolicLink(Path.Combine(_place, "Linked"), Path.Combine(_place, "Tuesdays"));

        var known = KnownFolder.In([new("documents", "in my documents", _place), new("here", "here", _place + "/.")]);

        Assert.Equal(["documents/Begun", "documents/Tuesdays"], known.Select(folder => folder.Key));
        Assert.Equal([Path.Combine(_place, "Begun"), Path.Combine(_place, "Tuesdays")], known.Select(folder => folder.Folder));
    }
}
