using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Whoever knows a type's name knows its folder.</summary>
public class NamespaceTests
{
    [Fact]
    public void Namespaces_follow_folders()
    {
        var misplaced = Misplaced(CompiledHouse.Types).ToList();
        Assert.True(misplaced.Count == 0, string.Join('\n', misplaced));
    }

    [Fact]
    public void A_moved_type_is_named_with_what_was_found_and_what_was_expected() =>
        Assert.Equal(
            ["src/ClassKit.Grading/Results/Credit.cs: Credit is in namespace ClassKit.Grading.Judging, expected ClassKit.Grading.Results"],
            Misplaced([
                Type("ClassKit.Grading.Judging.Credit", "ClassKit.Grading/Results/Credit.cs"),
                Type("ClassKit.Cli.CommandLine", "ClassKit.Cli/CommandLine.cs"),
            ])
        );

    private static IEnumerable<string> Misplaced(IEnumerable<HouseType> types) =>
        types
            .Where(type => !type.StandsWhereItSays)
            .Select(type =>
                $"src/{type.File}: {type.Name[(type.Namespace.Length + 1)..]} is in namespace {type.Namespace}, expected {type.NamespaceOfFolder}"
            );

    private static HouseType Type(string name, string file) =>
        new(name, file.Split('/')[0], file, new HashSet<string>(), HoldsOnlyConstants: false);
}
