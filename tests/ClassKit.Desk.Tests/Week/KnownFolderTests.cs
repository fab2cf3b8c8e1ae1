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

        Assert.Equal([Path.Combine(_place, "Begun"), Path.Combine(_place, "Tuesdays")], known.Select(folder => folder.Folder));
    }

    /// <summary>A page shows them, a stick is pulled, and then one is chosen: the one that was chosen is opened, or none.</summary>
    [Fact]
    public void Each_is_called_the_same_after_another_has_gone()
    {
        using var folders = new FolderHolder();
        foreach (var name in new[] { "A", "B", "C" })
            Assert.Null(folders.Open(new(Directory.CreateDirectory(Path.Combine(_place, name)).FullName)));
        string Key(string name) => Mine().Single(known => Path.GetFileName(known.Folder) == name).Key;
        IEnumerable<KnownFolder> Mine() =>
            KnownFolder.Of(folders).Where(known => known.Folder.StartsWith(_place, StringComparison.Ordinal));
        Assert.Null(folders.Open(new(Directory.CreateDirectory(Path.Combine(_place, "D")).FullName)));
        var (a, b) = (Key("A"), Key("B"));

        Directory.Delete(Path.Combine(_place, "A"), recursive: true);

        Assert.Equal(b, Key("B"));
        Assert.DoesNotContain(Mine(), known => known.Key == a);
    }

    /// <summary>The documents folder itself, and one in it of the same name.</summary>
    [Fact]
    public void Two_of_one_name_are_called_differently()
    {
        var inner = Path.Combine(_place, Path.GetFileName(_place));
        foreach (var folder in new[] { _place, inner })
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, "class.md"), "");
        }

        Assert.Equal(2, KnownFolder.In([new("documents", "in my documents", _place)]).Select(known => known.Key).Distinct().Count());
    }
}
