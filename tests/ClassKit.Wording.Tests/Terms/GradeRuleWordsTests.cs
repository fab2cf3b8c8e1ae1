using ClassKit.Terms.Rules;
using ClassKit.Wording.Terms;

namespace ClassKit.Wording.Tests.Terms;

/// <summary>What a rule's page says of markers, and of lines on a criterion, which ask another thing than lines on a category.</summary>
public sealed class GradeRuleWordsTests
{
    private static GradeRule Rule(MarkerRule markers, params PassLine[] lines) =>
        new("r", "Rule", [], lines, new([]), new(ResitChoice.Better, 1), AbsenceRule.Zero, 0, markers, new(null, default));

    [Fact]
    public void The_second_marker_stands_in_where_the_first_is_asked_for() =>
        Assert.Contains(
            "Where two marked the same work, the first marker's marks count; of whom only the second marked, the second's.",
            GradeRuleWords.Marks(Rule(MarkerRule.First))
        );

    [Theory]
    [InlineData("Safety", true)]
    [InlineData(null, false)]
    public void A_line_on_a_criterion_says_what_counts_for_it(string? criterion, bool isSaid) =>
        Assert.Equal(
            isSaid,
            GradeRuleWords
                .Marks(Rule(MarkerRule.Mean, new PassLine("Bench work", criterion, 60, 0)))
                .Any(said => said.Contains("dropped and late work too, as it was marked", StringComparison.Ordinal))
        );
}
