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

    /// <summary>The circles still known are listed beside this file, to be broken one by one: neither a new one nor a forgotten one passes.</summary>
    [Fact]
    public void Folders_run_in_no_circle_that_is_not_listed()
    {
        HashSet<string> known = [.. File.ReadLines(Repository.PathOf("tests", "ClassKit.House.Tests", "Rules", "known-circles.txt")).Where(line => !line.StartsWith('#'))];
        HashSet<string> found = [.. FolderGraph.Circles.Select(circle => string.Join(' ', circle))];

        Assert.True(known.SetEquals(found), $"New:\n{string.Join('\n', found.Except(known))}\nGone:\n{string.Join('\n', known.Except(found))}");
    }

    [Fact]
    public void Everything_is_reached_from_the_command_line() => Assert.Empty(Callers.Without);
}
