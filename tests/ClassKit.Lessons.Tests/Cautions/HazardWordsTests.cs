using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;

namespace ClassKit.Lessons.Tests.Cautions;

/// <summary>A demonstration warns of what it names, in whatever form the word stands.</summary>
public sealed class HazardWordsTests
{
    [Theory]
    [InlineData(Hazard.RawFlour, "flour, flours, dough, doughs, batter, batters, rub in, rubs in, rubbed in, rubbing in, wet into dry")]
    [InlineData(
        Hazard.OpenFlame,
        "burner, burners, hob, hobs, stove, stoves, flame, flames, flaming, griddle, griddles, fryer, fryers, pan, pans, small pans, saucepan, saucepans"
    )]
    [InlineData(
        Hazard.Scald,
        "kettle, kettles, hot water, boiling water, boil, boils, boiled, boiling, simmer, simmers, simmered, simmering, scald, scalds, scalded, scalding"
    )]
    [InlineData(Hazard.HotOven, "oven, ovens, oven gloves, hot tin, hot tins")]
    [InlineData(Hazard.HotFat, "hot fat, hot oil, hot oils, filling a hot tin, filling a hot tins")]
    [InlineData(Hazard.Frying, "fryer, fryers, deep fry, deep-fry, deep fries, deep-fried, deep frying")]
    [InlineData(Hazard.Steam, "steam, steams, steamed, steaming, steamer, steamers, pierce, pierces, pierced, piercing")]
    [InlineData(Hazard.Blade, "knife, knives, blade, blades, skewer, skewers, skewered, skewering, scissors, grater, graters")]
    [InlineData(Hazard.Mixer, "mixer, mixers")]
    [InlineData(Hazard.Balloon, "a balloon, the balloons, balloon, balloons")]
    [InlineData(Hazard.Probe, "probe, probes, probed, probing, thermometer, thermometers")]
    public void Each_word_is_known_in_each_of_its_forms(Hazard hazard, string words) =>
        Assert.All(words.Split(", "), word => Assert.Contains(hazard, StandingCautions.In(Shown("As it says.") with { Tools = [word] })));

    [Theory]
    [InlineData("A company of bakers expands", Hazard.OpenFlame)]
    [InlineData("A flamenco by the hobby baker", Hazard.OpenFlame)]
    [InlineData("Cloves and woven cloth", Hazard.HotOven)]
    [InlineData("The batter balloons", Hazard.Balloon)]
    [InlineData("In this kitchen water boils at 95 °C", Hazard.Scald)]
    [InlineData("Turmoil of the mixture", Hazard.Mixer)]
    [InlineData("Whether to improbe is improbable", Hazard.Probe)]
    public void Part_of_a_longer_word_is_none(string text, Hazard hazard) => Assert.DoesNotContain(hazard, In(text));

    /// <summary>What the review of this code was held against: both burners, the pans and the syrup.</summary>
    [Fact]
    public void Burners_pans_and_boiling_syrup_bring_first_aid() =>
        Assert.Superset(
            new HashSet<Hazard> { Hazard.OpenFlame, Hazard.Scald, Hazard.FirstAid },
            In("Light both burners and warm the pans; the syrup is boiling").ToHashSet()
        );

    private static IReadOnlyList<Hazard> In(string text) => StandingCautions.In(Shown(text));

    private static LessonDemonstration Shown(string text) => new("Shown", 2, "", "", text);
}
