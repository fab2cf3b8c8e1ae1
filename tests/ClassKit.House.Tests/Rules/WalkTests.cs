using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>The guide's walks lead through files that are there, each joined to one before it, and as many as it says.</summary>
public partial class WalkTests
{
    private const int Most = 40;

    public static TheoryData<string> Walks =>
        [.. Walk().Matches(File.ReadAllText(Repository.PathOf("DEVELOPERS.md"))).Select(walk => walk.Value)];

    [Fact]
    public void There_are_two() => Assert.Equal(2, Walks.Count);

    [Theory]
    [MemberData(nameof(Walks))]
    public void Every_file_of_a_walk_is_joined_to_one_before_it(string walk)
    {
        var types = Named(walk);
        for (var at = 1; at < types.Count; at++)
        {
            var here = types[at];
            Assert.True(
                types.Take(at).Any(before => before.Uses.Contains(here.Name) || here.Uses.Contains(before.Name)),
                $"{here.Name} and what stands before it know nothing of one another."
            );
        }
    }

    [Theory]
    [MemberData(nameof(Walks))]
    public void It_is_as_long_as_it_says_and_not_longer_than_it_may_be(string walk)
    {
        var (types, said) = (Named(walk), Length().Match(walk));
        Assert.Equal(
            (types.Select(type => type.File).Distinct().Count(), types.Select(type => type.Project).Distinct().Count()),
            (
                int.Parse(said.Groups["files"].Value, CultureInfo.InvariantCulture),
                int.Parse(said.Groups["rooms"].Value, CultureInfo.InvariantCulture)
            )
        );
        Assert.InRange(types.Count, 2, Most);
    }

    private static List<HouseType> Named(string walk) =>
        [
            .. Name()
                .Matches(walk)
                .Select(name => name.Groups["name"].Value)
                .Select(name =>
                    CompiledHouse.Types.SingleOrDefault(type => type.Name.EndsWith("." + name, StringComparison.Ordinal))
                    ?? throw new InvalidOperationException($"There is not one type {name}.")
                ),
        ];

    [GeneratedRegex(@"^An? \*\*.*?\d+ files in \d+ rooms", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Walk();

    [GeneratedRegex(@"`(?<name>\p{Lu}\w+)`")]
    private static partial Regex Name();

    [GeneratedRegex(@"(?<files>\d+) files in (?<rooms>\d+) rooms")]
    private static partial Regex Length();
}
