using System.Text.RegularExpressions;
using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Plurals are made in one place: <c>Counted</c>.</summary>
public partial class PluralTests
{
    /// <summary>A rule's own words are made where nobody knows <c>Counted</c>.</summary>
    private static readonly string[] Elsewhere = ["Counted.cs", "TotalRule.cs"];

    [Fact]
    public void Nobody_else_chooses_between_one_and_many()
    {
        var found = SourceLine
            .Of("src")
            .Where(line => !Elsewhere.Contains(Path.GetFileName(line.File)) && Chooses(line.Text))
            .Select(line => line.Shown)
            .ToList();
        Assert.True(found.Count == 0, $"{string.Join('\n', found)}\nUse Counted.Of or Counted.Noun.");
    }

    [Theory]
    [InlineData("$\"{(parts.Count == 1 ? \"part\" : \"parts\")}\"", true)]
    [InlineData("$\"Part{(blank.Count == 1 ? \"\" : \"s\")}\"", true)]
    [InlineData("$\"{(places == 1 ? \"1 place\" : $\"{places} places\")}\"", true)]
    [InlineData("Counted.Noun(parts.Count, \"part\")", false)]
    [InlineData("shift.Makers.Count == 1 ? \"The team\" : \"All teams\"", false)]
    public void A_line_that_chooses_is_known(string line, bool chooses) => Assert.Equal(chooses, Chooses(line));

    private static bool Chooses(string line) => Choice().IsMatch(line);

    [GeneratedRegex(@"== 1 \? ""(?<one>\w*) ?"" : ""\k<one>e?s ?""|\? ""1 (?<noun>\w+)"" : .*\} \k<noun>e?s\b")]
    private static partial Regex Choice();
}
