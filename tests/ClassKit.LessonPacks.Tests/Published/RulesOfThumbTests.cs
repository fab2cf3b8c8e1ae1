using ClassKit.Baking.Cooking;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.LessonPacks.Tests.Published;

/// <summary>
/// What practitioners say of resting, kneading and cooking, held against the lesson that leaves the oven out. Common practice, no source,
/// all of it.
/// </summary>
public sealed class RulesOfThumbTests
{
    /// <summary>As many as its class makes.</summary>
    private const int Pieces = 6;

    private static readonly IReadOnlyList<LessonFormula> Breads = LessonReader
        .Read(Repository.PathOf("lessons", "no-oven-in-the-house"))
        .Model!.Formulas;

    /// <summary>
    /// A thin unleavened round on a pan near 245 °C (475 °F) takes about a minute on the first side and 15 to 30 s on the second, then
    /// puffs in seconds. Common practice, no source.
    /// </summary>
    [Fact]
    public void A_round_takes_a_minute_and_a_quarter_to_two_on_a_pan_near_245_degrees()
    {
        var pan = Step("pan_rounds", CookingWay.Pan);

        Assert.InRange(pan.Temperature!.Value.Fahrenheit, 465, 485);
        Assert.InRange((double)pan.MinMinutes / Pieces, 1.25, 2);
        Assert.InRange((double)pan.MaxMinutes / Pieces, 1.25, 2);
    }

    /// <summary>
    /// Fried rounds take a minute and then half to one minute; two lots of three are three to four minutes, and as much again for filling
    /// and lifting out. Common practice, no source.
    /// </summary>
    [Fact]
    public void Two_lots_of_fritters_take_a_minute_and_a_half_to_two_each()
    {
        var fry = Step("spoon_fritters", CookingWay.Fryer);

        Assert.InRange(fry.MinMinutes, 2 * 1.5, 2 * 2 * 2);
        Assert.InRange(fry.MaxMinutes, 2 * 1.5, 2 * 2 * 2);
    }

    /// <summary>A plain whole-wheat dough of this kind holds about 70 % of water. Common practice, no source.</summary>
    [Fact]
    public void A_whole_wheat_round_holds_about_seventy_per_cent_of_water() =>
        Assert.InRange(Bread("pan_rounds").Formula.Lines.Single(line => line.Ingredient.Id == "water").Percent, 65, 75);

    /// <summary>Twenty minutes relax a dough for rolling, and an hour improves its flavour. Common practice, no source.</summary>
    [Fact]
    public void A_round_rests_for_twenty_minutes_and_no_more_than_an_hour()
    {
        var rest = Bread("pan_rounds").Steps.Single(step => step.Name == "Rest");

        Assert.True(rest.MinMinutes >= 20 && rest.MaxMinutes + rest.Work.Wait.MaxMinutes <= 60);
    }

    /// <summary>Kneading by hand to a windowpane takes 10 to 30 min. Common practice, no source.</summary>
    [Fact]
    public void A_smooth_dough_is_kneaded_by_hand_for_ten_minutes_and_more() =>
        Assert.InRange(Bread("milk_buns").Steps.Single(step => step.Name == "Knead").MinMinutes, 10, 30);

    private static LessonFormula Bread(string id) => Breads.Single(bread => bread.Formula.Id == id);

    private static MethodStep Step(string bread, CookingWay way) => Bread(bread).Steps.Single(step => step.Way == way);
}
