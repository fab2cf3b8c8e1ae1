using ClassKit.Grading.Foresight;
using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// One slip away from a key, the number must leave the tolerance on nearly all draws: else who makes it is told that all is right, and who is
/// dealt other numbers loses the points for the same formula.
/// </summary>
public sealed class HiddenTurnsTests
{
    /// <summary>What numbers may hide in more than a tenth of the draws, and why that is left.</summary>
    private static readonly Dictionary<string, string> Excused = new(StringComparer.Ordinal)
    {
        ["four_factors/friction"] =
            "nine temperatures of one kitchen: two of them may be nearly the same, and ranges apart would be no kitchen's",
        ["four_factors/water"] = "the same temperatures",
        ["too_warm_today/rule"] = "the same of four temperatures",
        ["day_old_portions/dry_loaf"] = "an even power of share minus 1 is that of 1 minus share: the same number by the same steps",
        ["mixer_batches/batches"] = "a share added to grams hides behind whole batches; the flour of a batch tells it",
        ["self_raising/spare"] = "what is left may be about as much as what went in",
        ["where_the_dough_went/oven"] = "bowl and rack may take about the same",
        ["yeast_by_solids/instant"] = "a few grams of dry matter: adding 0.95 and dividing by it come to the same near 18 g",
    };

    /// <summary>Even where it is excused some draws must tell, or nobody's work does.</summary>
    private const double Most = 0.7;

    public static TheoryData<string> Ids => ShippedBank.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Numbers_tell_a_slip_from_the_method(string id) =>
        Assert.Empty(
            ForeseenTurns
                .Of(ShippedBank.Of(id))
                .Where(turn => turn.Hidden > (Excused.ContainsKey($"{id}/{turn.Part.Id}") ? Most : ForeseenTurn.MostHidden))
                .Select(turn => $"{id}/{turn.Part.Id}: {turn.Formula} is taken for right in {turn.Hidden:P0} of the draws")
        );

    [Fact]
    public void Nothing_is_excused_that_hides_no_slip() =>
        Assert.All(Excused.Keys, key =>
            Assert.Contains(ForeseenTurns.Of(ShippedBank.Of(key.Split('/')[0])), turn => turn.IsHidden && turn.Part.Id == key.Split('/')[1])
        );
}
