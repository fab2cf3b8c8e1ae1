using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>The walls of the house, read off the compiled code.</summary>
public class WallTests
{
    [Fact]
    public void Every_type_has_a_folder() => Assert.All(CompiledHouse.Types, type => Assert.StartsWith("ClassKit.", type.Folder, StringComparison.Ordinal));

    [Fact]
    public void Projects_know_what_the_map_of_rooms_lets_them_know()
    {
        foreach (var project in CompiledHouse.Projects)
        {
            var room = project == "classkit" ? "ClassKit.Cli" : project;
            var allowed = RoomMap.AllowedFor(room);
            Assert.All(CompiledHouse.References(project), known => Assert.True(allowed.Contains(known), $"{room} knows {known}, which the map in DEVELOPERS.md does not show"));
        }
    }

    [Fact]
    public void Folders_run_in_no_circle() => Assert.True(FolderGraph.Circles.Count == 0, string.Join('\n', FolderGraph.Circles.Select(FolderGraph.Shown)));

    [Fact]
    public void Everything_is_reached_from_the_command_line() => Assert.Empty(Callers.Without);
}
