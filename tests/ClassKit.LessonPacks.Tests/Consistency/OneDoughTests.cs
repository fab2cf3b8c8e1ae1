using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>Whether breads differ in more than their leavening is said as their formulas have it.</summary>
public sealed class OneDoughTests
{
    private const string Alike = "only what lifts it differs";
    private const string Unlike = "The breads differ in more than their leavening";

    private static string Words(BuiltPack pack) => pack["comparison.html"].Body!.Words();

    [Fact]
    public void Three_systems_are_called_three_systems()
    {
        foreach (var pack in (BuiltPack[])[BuiltPack.Demo, BuiltPack.Mountain, BuiltPack.NoOven])
        {
            Assert.Contains(Unlike, Words(pack), StringComparison.Ordinal);
            Assert.DoesNotContain(Alike, Words(pack), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void One_dough_is_called_one()
    {
        Assert.Contains(Alike, Words(BuiltPack.LongMorning), StringComparison.Ordinal);
        Assert.DoesNotContain(Unlike, Words(BuiltPack.LongMorning), StringComparison.Ordinal);
    }

    /// <summary>80 of flour and 40 of a starter of equal parts are 100 of flour; 46 of water and the starter's 20 are 66, as in the two other doughs.</summary>
    [Fact]
    public void The_water_of_a_starter_counts_as_water_on_its_card()
    {
        var cards = BuiltPack.LongMorning["formula-cards.html"].QuerySelectorAll("article, section").Select(card => card.Words()).ToList();
        foreach (var bread in (string[])["Starter rolls", "Yeast rolls", "Powder rolls"])
            Assert.Contains(cards, card => card.Contains(bread, StringComparison.Ordinal) && card.Contains("66 %", StringComparison.Ordinal));
    }

    [Fact]
    public void The_control_stands_on_the_plan_and_at_the_bench() =>
        Assert.Contains("Nothing in it", BuiltPack.LongMorning["bench-plan.html"].Body!.Words(), StringComparison.Ordinal);

    [Fact]
    public void What_nobody_can_predict_is_not_predicted() =>
        Assert.Contains("Starter rolls: what it holds cannot be predicted", Words(BuiltPack.LongMorning), StringComparison.Ordinal);
}
