using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Cautions;

/// <summary>
/// An authored caution takes the place of a standing one where its author says so, and nowhere else: a caution twice is a nuisance, one lost
/// an injury. Common practice, no source.
/// </summary>
public sealed class InPlaceOfTests
{
    /// <summary>Titles and texts that sound like the rule of a hazard; some of them say its opposite, and some say all of it.</summary>
    [Theory]
    [InlineData("Burner", "Turn it to low before the milk goes in.")]
    [InlineData("Burner", "Leave it lit until the plan's third step.")]
    [InlineData("Mixer", "On speed 2, or by hand.")]
    [InlineData("Raw flour", "Taste a little of the dough for salt.")]
    [InlineData("Hot water", "Pour it away at the end.")]
    [InlineData("Steam", "Pour a cup of water onto the tray and shut the door.")]
    [InlineData("Hot tins and oil", "Dry them before use.")]
    [InlineData("Knives", "Point to the drawer where they are kept.")]
    [InlineData("Microwave", "It is on the stand.")]
    [InlineData("Allergens", "Wheat.")]
    [InlineData("House rules first", "Local codes and your own safety rules come before anything written here.")]
    [InlineData("Raw flour", "Nobody tastes dough.")]
    [InlineData("Deep fat", "Never water on it: heat off, lid on.")]
    [InlineData("First aid", "20 minutes under cool running water.")]
    public void No_wording_takes_a_standing_caution_away(string title, string text)
    {
        var authored = new Caution(title, text, "common practice, no source");
        Assert.All(Enum.GetValues<Hazard>(), hazard => Assert.False(StandingCautions.Speaks(authored, hazard)));

        var bread = SampleLesson.Buns with { Cautions = [authored] };
        Assert.Equal(Standing(SampleLesson.Buns with { Cautions = [] }), Standing(bread));
    }

    [Fact]
    public void What_an_author_names_is_printed_in_its_place_and_nothing_else_goes()
    {
        var authored = new Caution("Doughs", "Nobody tastes.", "common practice, no source")
        {
            InPlaceOf = [Hazard.RawFlour, Hazard.HotOven],
        };
        var bare = SampleLesson.Buns with { Cautions = [] };
        var bread = bare with { Cautions = [authored] };

        Assert.Contains(Hazard.RawFlour, Standing(bare));
        Assert.Equal(Standing(bare).Except([Hazard.RawFlour, Hazard.HotOven]), Standing(bread));
        Assert.Contains(authored, StandingCautions.For(bread));
        Assert.True(StandingCautions.Speaks(authored, Hazard.HotOven));
    }

    /// <summary>What must be declared follows from the formula: an author changes neither that nor loses their own words.</summary>
    [Fact]
    public void Nothing_is_printed_in_place_of_what_must_be_declared()
    {
        var authored = new Caution("Allergens", "Sesame is in the air.", "common practice, no source") { InPlaceOf = [Hazard.Allergens] };
        var cautions = StandingCautions.BesideTheTable(SampleLesson.Lesson with { Cautions = [authored] });

        Assert.Contains(authored, cautions);
        Assert.Single(cautions, caution => caution.Of == Hazard.Allergens);
    }

    [Fact]
    public void A_standing_caution_speaks_of_its_own_hazard_alone()
    {
        foreach (var caution in StandingCautions.For(SampleLesson.Lesson).Where(caution => caution.Of is not null))
            Assert.Equal([caution.Of!.Value], Enum.GetValues<Hazard>().Where(hazard => StandingCautions.Speaks(caution, hazard)));
    }

    [Fact]
    public void Every_standing_caution_is_found_by_its_name_and_by_its_title_and_no_two_share_one()
    {
        var all = Enum.GetValues<Hazard>();
        Assert.Equal(all.Length, all.Select(HazardNames.Of).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(all, hazard => Assert.Equal(hazard, HazardNames.Find(HazardNames.Of(hazard).ToUpperInvariant())));
        Assert.All(all, hazard => Assert.Equal(hazard, HazardNames.Find(StandingCautions.TitleOf(hazard))));
        Assert.Null(HazardNames.Find("wet floors"));
    }

    /// <summary>A title is known to look like the standing caution that it is called after.</summary>
    [Fact]
    public void What_a_standing_caution_is_called_looks_like_it() =>
        Assert.All(Enum.GetValues<Hazard>().Where(HazardNames.CanBeReplaced), hazard =>
        {
            var authored = new Caution(StandingCautions.TitleOf(hazard), "As it says.", "common practice, no source");
            Assert.Contains(hazard, StandingCautions.Alike(authored));
            Assert.DoesNotContain(hazard, StandingCautions.Alike(authored with { InPlaceOf = [hazard] }));
        });

    [Theory]
    [InlineData("Levain")]
    [InlineData("Strawberries")]
    [InlineData("No flame")]
    [InlineData("Without a burner")]
    [InlineData("Who stands where")]
    [InlineData("Fillings")]
    public void A_title_of_something_else_looks_like_none(string title) =>
        Assert.Empty(StandingCautions.Alike(new(title, "As it says.", "common practice, no source")));

    private static IEnumerable<Hazard> Standing(LessonFormula bread) =>
        StandingCautions.For(bread).Select(caution => caution.Of).OfType<Hazard>();
}
