using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;
using ClassKit.Lessons.Tests.Packs;

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
    [InlineData(Hazard.Blade, "peeler, razor, lame, scalpel, pizza wheel")]
    [InlineData(Hazard.Mandoline, "mandoline, mandolines, mandolin")]
    [InlineData(Hazard.Mixer, "mixer, mixers")]
    [InlineData(Hazard.Blender, "blender, stick blender, food processor, food processors")]
    [InlineData(Hazard.HotPlate, "hot plate, hotplate, griddle, hot pan, frying pan, waffle irons")]
    [InlineData(Hazard.Microwave, "microwave, microwaves, microwaved")]
    [InlineData(Hazard.Grill, "grill, grilled, broiler, broil")]
    [InlineData(Hazard.Torch, "torch, blow torch, blowtorch, kitchen torch")]
    [InlineData(Hazard.Lye, "lye, food-grade lye, caustic soda, sodium hydroxide")]
    [InlineData(Hazard.DeepCold, "dry ice, liquid nitrogen")]
    [InlineData(Hazard.PressureCooker, "pressure cooker, pressure-cooker, pressure cookers")]
    [InlineData(Hazard.HotSugar, "caramel, hot syrup, boil the syrup, melt the sugar, the syrup is boiling, sugar thermometer")]
    [InlineData(Hazard.Freezing, "freezer, freeze, freezes, thaw, thawed, frozen dough")]
    [InlineData(Hazard.Reheating, "reheat, reheated, reheats, heated again, warm them again")]
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
    [InlineData("A pastry blender cuts the butter", Hazard.Blender)]
    [InlineData("Until caramel-coloured, on a cooling grill", Hazard.HotSugar)]
    [InlineData("Until caramel-coloured, on a cooling grill", Hazard.Grill)]
    [InlineData("Fold in the frozen blueberries from a freezer bag", Hazard.Freezing)]
    [InlineData("A lamed dough of Lyell", Hazard.Lye)]
    public void Part_of_a_longer_word_is_none(string text, Hazard hazard) => Assert.DoesNotContain(hazard, In(text));

    /// <summary>What the review of this code was held against: both burners, the pans and the syrup.</summary>
    [Fact]
    public void Burners_pans_and_boiling_syrup_bring_first_aid() =>
        Assert.Superset(
            new HashSet<Hazard> { Hazard.OpenFlame, Hazard.Scald, Hazard.FirstAid },
            In("Light both burners and warm the pans; the syrup is boiling").ToHashSet()
        );

    /// <summary>A hazard that is added later has its words, or is exempt by name.</summary>
    [Fact]
    public void Every_hazard_that_words_can_name_has_words() =>
        Assert.Equal(Enum.GetValues<Hazard>().Except(HazardWords.OfNoWord), Enum.GetValues<Hazard>().Where(HazardWords.HasWords));

    [Fact]
    public void Every_hazard_has_a_caution_with_its_rule_and_a_source() =>
        Assert.All(Enum.GetValues<Hazard>().Where(HazardWords.HasWords), hazard =>
        {
            var caution = Assert.Single(
                StandingCautions.For(SampleLesson.Buns with { Steps = [Step(Saying(hazard))], Cautions = [] }),
                caution => caution.Of == hazard
            );
            Assert.NotEmpty(caution.InShort);
            Assert.NotEmpty(caution.Source);
        });

    /// <summary>What a method says is a hazard whether or not its brackets name the equipment.</summary>
    [Theory]
    [InlineData("Melt the butter in a saucepan on the hob.", Hazard.OpenFlame)]
    [InlineData("Melt the butter in a small pan.", Hazard.OpenFlame)]
    [InlineData("Heat the oil until hot; swirl it in the hot tin.", Hazard.HotFat)]
    [InlineData("Toast the seeds under the grill.", Hazard.Grill)]
    [InlineData("Melt the chocolate in the microwave.", Hazard.Microwave)]
    [InlineData("Slash the tops with a lame.", Hazard.Blade)]
    [InlineData("Dip each pretzel into the lye.", Hazard.Lye)]
    [InlineData("Brown the tops with a blow torch.", Hazard.Torch)]
    [InlineData("Boil the syrup to a soft ball.", Hazard.HotSugar)]
    [InlineData("Fry them in a deep-fat fryer.", Hazard.Frying)]
    [InlineData("Steam them over a pot.", Hazard.Steam)]
    [InlineData("Wrap and freeze them.", Hazard.Freezing)]
    [InlineData("Reheat them before they are served.", Hazard.Reheating)]
    [InlineData("Warm the plates in the oven.", Hazard.HotOven)]
    public void Words_of_a_method_name_hazards(string says, Hazard hazard)
    {
        Assert.DoesNotContain(hazard, Method("Stir."));
        Assert.Contains(hazard, Method(says));
    }

    [Fact]
    public void A_flame_that_only_words_name_brings_first_aid() =>
        Assert.Contains(Hazard.FirstAid, Method("Melt the butter in a saucepan on the hob."));

    /// <summary>Words that stand in most methods and are no hazard there.</summary>
    [Theory]
    [InlineData("Weigh the milk into the pan.", Hazard.OpenFlame)]
    [InlineData("Grease a loaf pan and warm the milk beside it.", Hazard.OpenFlame)]
    [InlineData("Heat the oven and grease the pan.", Hazard.OpenFlame)]
    [InlineData("Put on the oven gloves.", Hazard.HotOven)]
    [InlineData("Look for oven spring.", Hazard.HotOven)]
    [InlineData("Pierce the lid of the box.", Hazard.Steam)]
    [InlineData("Stir oil into the warm milk.", Hazard.HotFat)]
    public void And_not_what_only_sounds_like_one(string says, Hazard hazard) => Assert.DoesNotContain(hazard, Method(says));

    /// <summary>A bread's own name is no deed: steamed rolls are named in steps that steam nothing.</summary>
    [Fact]
    public void What_a_bread_is_called_is_no_hazard()
    {
        var bread = Bread("Weigh what the steamed rolls need.");

        Assert.Contains(Hazard.Steam, StandingCautions.In(bread));
        Assert.DoesNotContain(Hazard.Steam, StandingCautions.In(bread with { Formula = bread.Formula with { Title = "Steamed rolls" } }));
    }

    [Fact]
    public void What_a_demonstration_occupies_is_told_of_as_what_it_says()
    {
        var shown = Shown("A drop of batter sets.") with { Uses = [new(EquipmentKind.Griddle, 1)] };

        Assert.Superset(new HashSet<Hazard> { Hazard.HotPlate, Hazard.OpenFlame }, StandingCautions.In(shown).ToHashSet());
    }

    private static string Saying(Hazard hazard) =>
        hazard switch
        {
            Hazard.RawFlour => "Stir.",
            Hazard.OpenFlame => "burner",
            Hazard.Scald => "kettle",
            Hazard.HotFat => "hot oil",
            Hazard.Balloon => "a balloon",
            Hazard.Blade => "knife",
            Hazard.Probe => "probe",
            Hazard.Frying => "fryer",
            _ => HazardNames.Of(hazard),
        };

    private static IReadOnlyList<Hazard> Method(string says) => StandingCautions.In(Bread(says));

    /// <summary>A bread that nobody bakes, so that words alone tell.</summary>
    private static LessonFormula Bread(string says) => SampleLesson.Buns with { Steps = [Step(says)], Equipment = [] };

    private static MethodStep Step(string says) => new("Do", says, 1, 2, null);

    private static IReadOnlyList<Hazard> In(string text) => StandingCautions.In(Shown(text));

    private static LessonDemonstration Shown(string text) => new("Shown", 2, "", "", text);
}
