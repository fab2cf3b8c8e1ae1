using ClassKit.Exercises.Marking;
using ClassKit.Wording.Marking;

namespace ClassKit.Wording.Tests.Marking;

public class TotalRuleWordsTests
{
    [Theory]
    [InlineData(null, null, "")]
    [InlineData(1, null, "Only the best exercise counts.")]
    [InlineData(5, 40, "Only the 5 best exercises count, and at most 40 points.")]
    [InlineData(null, 40, "At most 40 points count.")]
    [InlineData(null, 1, "At most 1 point counts.")]
    public void The_rule_is_a_sentence(int? best, int? most, string words)
    {
        Assert.Equal(words, TotalRuleWords.Of(new TotalRule(best, most)));
    }
}
