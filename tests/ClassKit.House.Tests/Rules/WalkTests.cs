using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>The guide's walks lead from file to file without a gap, through as many as it says.</summary>
/// <remarks>
/// Each file of a walk knows the one directly before it, or is known by it: of a file left out, the two beside it seldom know one another.
/// What stands in parentheses helps the file before them, and is joined to that or to another helper before it.
/// </remarks>
public partial class WalkTests
{
    private const int Most = 43;

    public static TheoryData<string> Walks => [.. Written];

    private static IEnumerable<string> Written =>
        Walk().Matches(File.ReadAllText(Repository.PathOf("DEVELOPERS.md"))).Select(walk => walk.Value);

    [Fact]
    public void There_are_two() => Assert.Equal(2, Written.Count());

    [Theory]
    [MemberData(nameof(Walks))]
    public void Every_file_of_a_walk_is_joined_to_the_one_before_it(string walk) => Assert.Empty(Gaps(Steps(walk)));

    [Theory]
    [MemberData(nameof(Walks))]
    public void It_is_as_long_as_it_says_and_not_longer_than_it_may_be(string walk)
    {
        var (types, said) = (Steps(walk).Select(step => step.Type).ToList(), Length().Match(walk));
        Assert.Equal(
            (types.Select(type => type.File).Distinct().Count(), types.Select(type => type.Project).Distinct().Count()),
            (
                int.Parse(said.Groups["files"].Value, CultureInfo.InvariantCulture),
                int.Parse(said.Groups["rooms"].Value, CultureInfo.InvariantCulture)
            )
        );
        Assert.InRange(types.Distinct().Count(), 2, Most);
    }

    /// <summary>What the guide left out once: the test must see it.</summary>
    [Theory]
    [InlineData("NumberedProblem")]
    [InlineData("DealtStudent")]
    [InlineData("FormulaCard")]
    public void A_file_that_is_left_out_is_missed(string name)
    {
        var walk = Written.Single(walk => walk.Contains($"`{name}`", StringComparison.Ordinal));

        Assert.NotEmpty(Gaps(Steps(walk.Replace($"`{name}`", "", StringComparison.Ordinal))));
    }

    private static List<string> Gaps(IReadOnlyList<Step> steps)
    {
        List<string> gaps = [];
        Step? before = null;
        List<Step> helpers = [];
        foreach (var step in steps)
        {
            if (!step.Helps)
                helpers = [step];
            IEnumerable<Step> joined =
                step.Helps ? helpers
                : before is null ? []
                : [before];
            if (before is not null && !joined.Any(one => one.Knows(step) || step.Knows(one)))
                gaps.Add($"{step.Type.Name} and {before.Type.Name} know nothing of one another: what stands between them?");
            if (step.Helps)
                helpers.Add(step);
            else
                before = step;
        }
        return gaps;
    }

    private static List<Step> Steps(string walk) =>
        [
            .. Name()
                .Matches(walk)
                .Select(name => new Step(
                    CompiledHouse.Types.SingleOrDefault(type =>
                        type.Name.EndsWith("." + name.Groups["name"].Value, StringComparison.Ordinal)
                    ) ?? throw new InvalidOperationException($"There is not one type {name.Groups["name"].Value}."),
                    walk[..name.Index].Count(sign => sign == '(') > walk[..name.Index].Count(sign => sign == ')')
                )),
        ];

    /// <param name="Type">The type whose file it is.</param>
    /// <param name="Helps">True if it helps the step before the parentheses.</param>
    private sealed record Step(HouseType Type, bool Helps)
    {
        public bool Knows(Step other) => Type.Uses.Contains(other.Type.Name);
    }

    [GeneratedRegex(@"^An? \*\*.*?\d+ files in \d+ rooms", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Walk();

    [GeneratedRegex(@"`(?<name>\p{Lu}\w+)`")]
    private static partial Regex Name();

    [GeneratedRegex(@"(?<files>\d+) files in (?<rooms>\d+) rooms")]
    private static partial Regex Length();
}
