using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>The walls of the house, read off the compiled code; and that one who breaks through is named.</summary>
public class WallTests
{
    [Fact]
    public void Every_type_has_a_folder() =>
        Assert.All(CompiledHouse.Types, type => Assert.StartsWith("ClassKit.", type.Folder, StringComparison.Ordinal));

    [Fact]
    public void Projects_know_what_the_map_of_rooms_lets_them_know() =>
        Assert.Empty(CompiledHouse.Projects.SelectMany(project => AgainstTheMap(project, CompiledHouse.References(project))));

    [Fact]
    public void An_arrow_against_the_map_is_named() =>
        Assert.Equal(
            ["ClassKit.Baking knows ClassKit.Exercises, which the map in DEVELOPERS.md does not show"],
            AgainstTheMap("ClassKit.Baking", ["ClassKit.Exercises"]).Concat(AgainstTheMap("ClassKit.Grading", ["ClassKit.Exercises"]))
        );

    [Fact]
    public void Folders_run_in_no_circle() =>
        Assert.True(new FolderGraph(CompiledHouse.Types).Circles is [], string.Join('\n', new FolderGraph(CompiledHouse.Types).Circles));

    [Fact]
    public void A_circle_of_folders_is_named_with_the_types_that_close_it() =>
        Assert.Equal(
            [
                "ClassKit.A/Doors ClassKit.A/Walls:\n  ClassKit.A/Doors → ClassKit.A/Walls: ClassKit.A.Doors.Door names ClassKit.A.Walls.Wall\n  ClassKit.A/Walls → ClassKit.A/Doors: ClassKit.A.Walls.Wall names ClassKit.A.Doors.Door",
            ],
            new FolderGraph([Type("Doors.Door", "Walls.Wall"), Type("Walls.Wall", "Doors.Door"), Type("Roofs.Roof", "Walls.Wall")]).Circles
        );

    [Fact]
    public void Everything_is_reached_from_the_command_line() => Assert.Empty(Callers.Without);

    private static IEnumerable<string> AgainstTheMap(string project, IEnumerable<string> knows)
    {
        var room = project == "classkit" ? "ClassKit.Cli" : project;
        return knows
            .Where(known => !RoomMap.AllowedFor(room).Contains(known))
            .Select(known => $"{room} knows {known}, which the map in DEVELOPERS.md does not show");
    }

    private static HouseType Type(string name, string names) =>
        new(
            "ClassKit.A." + name,
            "ClassKit.A",
            $"ClassKit.A/{name.Replace('.', '/')}.cs",
            new HashSet<string> { "ClassKit.A." + names },
            HoldsOnlyConstants: false
        );
}
