using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Cautions;

/// <summary>An authored caution takes the place of a standing one only where it names the hazard and says its rule. Common practice, no source.</summary>
public sealed class ReplacedHazardsTests
{
    /// <summary>Sentences that hold the letters or the words of a hazard and speak of something else, or say what there is none of.</summary>
    [Theory]
    [InlineData("Levain", "The levain stands 14 hours.")]
    [InlineData("Beans", "Soak for 24 hours, held at 15 °C.")]
    [InlineData("Levain", "It is ripe after 4 hours; an old one is thrown away.")]
    [InlineData("Holding", "The dough is held for 14 hours, and what is left is thrown away.")]
    [InlineData("Holding", "Rolls are held at 157 °C until brown, and kept at 25 °C.")]
    [InlineData("Holding", "Hold the tin with two hands.")]
    [InlineData("Holding", "Serve at once, or keep at 5 °C (41 °F) or below.")]
    [InlineData("Strawberries", "Draw the flour in from the sides.")]
    [InlineData("Drawing in flour", "Nobody tastes the strawberries.")]
    [InlineData("Raw flour", "It goes far: sweep the bench.")]
    [InlineData("Sugar", "Boiling syrup is hot.")]
    [InlineData("Boiling", "It is hot: stand away, and keep it dry.")]
    [InlineData("No flame", "No flame is needed, nobody leaves the table.")]
    [InlineData("Without a burner", "Handles turned in.")]
    [InlineData("Table", "No burner is lit, no oven is hot, no gloves are needed.")]
    [InlineData("Steamed buns", "They hold sesame: keep them away from whoever is allergic.")]
    [InlineData("Scalded milk", "Whoever is allergic to milk keeps away.")]
    [InlineData("Hot tin", "Loosen with a blunt knife.")]
    [InlineData("Fillings", "Local codes ask for 60 °C (140 °F).")]
    [InlineData("Who stands where", "Fryers stand against a wall, away from sinks and water, with a lid beside them.")]
    [InlineData("Fryer", "Shut the lid of the bin.")]
    [InlineData("Freezer", "The dough thaws on the bench at 25 °C.")]
    [InlineData("Reheating", "In an oven of 175 °C.")]
    [InlineData("First aid", "The box hangs by the door with the running water.")]
    [InlineData("Allergens", "Wheat.")]
    public void What_speaks_of_something_else_replaces_nothing(string title, string text) =>
        Assert.Empty(ReplacedHazards.Of(new(title, text, "common practice, no source")));

    [Theory]
    [InlineData("House rules first", "Local codes and your own safety rules come before anything written here.", Hazard.HouseRules)]
    [InlineData("Raw egg and flour", "No tasting of batter.", Hazard.RawFlour)]
    [InlineData("Raw flour", "Nobody tastes dough.", Hazard.RawFlour)]
    [InlineData("Burners", "Handles turned inwards.", Hazard.OpenFlame)]
    [InlineData("Scalds", "One person pours, slowly.", Hazard.Scald)]
    [InlineData("Boiling water", "Lids stay on.", Hazard.Scald)]
    [InlineData("Hot ovens and trays", "Dry gloves only, and say \"hot behind you\".", Hazard.HotOven)]
    [InlineData("Hot oil", "Nothing wet near it.", Hazard.HotFat)]
    [InlineData("Deep fat", "Never water on it: heat off, lid on.", Hazard.Frying)]
    [InlineData("Steam when piercing", "Glove on, face turned away.", Hazard.Steam)]
    [InlineData("Griddle", "It stays hot: tongs.", Hazard.HotPlate)]
    [InlineData("Microwave", "Let it stand a minute.", Hazard.Microwave)]
    [InlineData("Knives", "Point down, at the side.", Hazard.Blade)]
    [InlineData("Mixer", "Hands out of the bowl while it turns.", Hazard.Mixer)]
    [InlineData("Balloons", "Ask first: they are of latex.", Hazard.Balloon)]
    [InlineData("Probes", "Cleaned before each use.", Hazard.Probe)]
    [InlineData("Burns", "20 minutes under cool running water.", Hazard.FirstAid)]
    [InlineData("Holding", "What stood warm for 4 hours is thrown away.", Hazard.Holding)]
    [InlineData("Holding", "At 57 °C (135 °F) or above, or at 5 °C (41 °F) or below.", Hazard.Holding)]
    [InlineData("Freezing", "It thaws at 5 °C (41 °F) or below.", Hazard.Freezing)]
    [InlineData("Reheating", "To 74 °C (165 °F) all through.", Hazard.Reheating)]
    public void What_names_the_hazard_and_says_its_rule_replaces_it(string title, string text, Hazard hazard) =>
        Assert.Contains(hazard, ReplacedHazards.Of(new(title, text, "common practice, no source")));

    /// <summary>What must be declared follows from the formula: an author's heading changes neither that nor the author's own words.</summary>
    [Fact]
    public void An_authored_caution_called_Allergens_keeps_its_words_beside_the_standing_one()
    {
        var authored = new Caution("Allergens", "Sesame is in the air.", "common practice, no source");
        var cautions = StandingCautions.BesideTheTable(SampleLesson.Lesson with { Cautions = [authored] });

        Assert.Contains(authored, cautions);
        Assert.Single(cautions, caution => caution.Of == Hazard.Allergens);
    }

    [Fact]
    public void A_safety_rule_stays_beside_a_sentence_that_holds_its_letters()
    {
        var bread = SampleLesson.Buns with { Cautions = [new("Levain", "It stands 14 hours; draw the flour in.", "from memory")] };

        Assert.Superset(
            new HashSet<Hazard?> { Hazard.Holding, Hazard.RawFlour },
            StandingCautions.For(bread).Select(caution => caution.Of).ToHashSet()
        );
    }

    [Fact]
    public void A_standing_caution_speaks_of_its_own_hazard_alone()
    {
        foreach (var caution in StandingCautions.For(SampleLesson.Lesson).Where(caution => caution.Of is not null))
            Assert.Equal([caution.Of!.Value], Enum.GetValues<Hazard>().Where(hazard => StandingCautions.Speaks(caution, hazard)));
    }
}
