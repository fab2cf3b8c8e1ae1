using ClassKit.Grading.Waiting;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>What waits for nothing but an earlier answer is decided on with it.</summary>
public sealed class HeldUpTests
{
    /// <summary>A formula that the evaluator does not work out.</summary>
    private const string Unknown = "=LAMBDA(x,x+1)(86)";

    [Theory]
    [InlineData("=3*want-sum", true)]
    [InlineData("=(3*want)-sum", true)]
    [InlineData("=3*want-sum+1", false)]
    public void A_later_formula_that_points_at_it_waits_and_is_right_where_it_is_the_keys(string later, bool isKey)
    {
        var (first, behind) = Assert.Single(Held(Unknown, later));

        Assert.Equal("sum", first.Part.Id);
        Assert.Equal(("temperature", isKey), Assert.Single(behind.Select(one => (one.Answer.Part.Id, one.IsKey))));
    }

    [Theory]
    [InlineData(Unknown, Unknown)]
    [InlineData(Unknown, "86")]
    [InlineData("=flour+room+friction", "=3*want-sum")]
    public void What_has_its_own_reason_to_wait_or_none_does_not(string first, string later) => Assert.Empty(Held(first, later));

    private static IReadOnlyList<HeldUp> Held(string first, string later)
    {
        var grade = new ClassGrader(Class)
            .Judge(new ReturnedBook(Ada).Answer("sum", first).Answer("temperature", later).As("ada-berg.xlsx"))
            .Grade!;
        return HeldUp.Of(grade, Class.LayOut());
    }
}
