namespace ClassKit.House.Tests.Rules;

/// <summary>Decisions have a place in every room.</summary>
public class RoomReadmeTests
{
    [Fact]
    public void Every_room_says_what_was_decided_in_it()
    {
        var rooms = Directory
            .EnumerateDirectories(Repository.PathOf("src"))
            .Where(room => Directory.EnumerateFiles(room, "*.csproj").Any());
        var silent = rooms.Where(room =>
            !File.Exists(Path.Combine(room, "README.md"))
            || !File.ReadAllText(Path.Combine(room, "README.md")).Contains("## Decisions", StringComparison.Ordinal)
        );

        Assert.Empty(silent.Select(Path.GetFileName));
    }
}
