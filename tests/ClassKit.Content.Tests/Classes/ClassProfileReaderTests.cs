using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Classes;

namespace ClassKit.Content.Tests.Classes;

public sealed class ClassProfileReaderTests : IDisposable
{
    private readonly ContentFolder _folder = new();
    private readonly string _shipped = File.ReadAllText(Path.Combine(Repository.Demo, "class.md")).ReplaceLineEndings("\n");

    public void Dispose() => _folder.Dispose();

    private Reading<ClassProfile> Read(string text)
    {
        _folder.Write("prices.md", File.ReadAllText(Path.Combine(Repository.Demo, "prices.md")));
        return ClassProfileReader.Read(_folder.Write("class.md", text));
    }

    [Fact]
    public void A_profile_is_read_in_full()
    {
        var profile = Read(_shipped).Model;

        Assert.NotNull(profile);
        Assert.Equal("Tuesday bakers", profile.Name);
        Assert.Equal("Fennel Row Teaching Kitchen", profile.Kitchen);
        Assert.Equal((24, 6, 6, 150, 3), (profile.Students, profile.Teams, profile.PiecesPerTeam, profile.PeriodMinutes, profile.Ovens));
        Assert.Equal((24.0, 320.0), (profile.KitchenTemperature.Celsius, profile.AltitudeMetres));
        Assert.Equal((1.0, 0.1), (profile.ScaleResolution.Grams, profile.SmallScaleResolution.Grams));
        Assert.Equal(["sesame", "tree nut"], profile.Allergies.Select(need => need.Word));
        Assert.Equal(UnitSystem.Both, profile.Units);
    }

    [Fact]
    public void Other_units_are_converted()
    {
        var profile = Read(
            _shipped
                .Replace("320 m", "5000 ft", StringComparison.Ordinal)
                .Replace("24 °C", "75.2 F", StringComparison.Ordinal)
                .Replace("150 min", "2.5 h", StringComparison.Ordinal)
        ).Model!;

        // An international foot is exactly 0.3048 m (NIST SP 811, appendix B).
        Assert.Equal(1524, profile.AltitudeMetres, 1e-9);
        Assert.Equal(24, profile.KitchenTemperature.Celsius, 1e-9);
        Assert.Equal(150, profile.PeriodMinutes);
    }

    [Theory]
    [InlineData("2 steamers of 3 places of 28 cm hot in 10 min", 3, 280.0, 10)]
    // An inch is exactly 25.4 mm (NIST SP 811, appendix B)
    [InlineData("2 steamers of 1 place of 10 in", 1, 254.0, null)]
    [InlineData("2 steamers of 3 places hot in 10 min", 3, null, 10)]
    public void A_steamer_says_how_wide_its_baskets_are(string written, int places, double? millimetres, int? minutes)
    {
        var steamer = Read(_shipped.Replace("6 burners", $"6 burners, {written}", StringComparison.Ordinal))
            .Model!.ApplianceOf(EquipmentKind.Steamer);

        Assert.Equal((2, places, minutes), (steamer.Count, steamer.Places, steamer.HeatUpMinutes));
        Assert.Equal(millimetres, steamer.PlaceMillimetres);
    }

    [Fact]
    public void A_class_without_allergies_says_none()
    {
        foreach (var none in new[] { "none", "None", "[]" })
            Assert.Empty(Read(_shipped.Replace("[sesame, tree nuts]", none, StringComparison.Ordinal)).Model!.Allergies);
    }

    [Fact]
    public void Gluten_is_understood_and_one_allergy_in_two_spellings_is_one() =>
        Assert.Equal(
            ["gluten", "egg"],
            Read(_shipped.Replace("[sesame, tree nuts]", "[Gluten, eggs, Egg, gluten-free]", StringComparison.Ordinal))
                .Model!.Allergies.Select(need => need.Word)
        );

    // Names of the IANA time zone database (tz, RFC 6557); a profile without one is as good as before.
    [Fact]
    public void A_time_zone_is_read_in_any_case_and_may_be_left_out()
    {
        Assert.Equal("Europe/Paris", Read(_shipped).Model!.TimeZone!.Id);
        Assert.Equal(
            "America/New_York",
            Read(_shipped.Replace("Europe/Paris", "america/new_york", StringComparison.Ordinal)).Model!.TimeZone!.Id
        );
        Assert.Null(Read(_shipped.Replace("time zone: Europe/Paris\n", "", StringComparison.Ordinal)).Model!.TimeZone);
    }

    [Theory]
    [InlineData("Paris", "Europe/Paris")]
    [InlineData("New York", "America/New_York")]
    [InlineData("Europe/Pariss", "Europe/Paris")]
    public void A_time_zone_that_is_none_is_refused_with_the_one_that_was_meant(string typed, string meant)
    {
        var problem = Assert.Single(Read(_shipped.Replace("Europe/Paris", typed, StringComparison.Ordinal)).Problems);

        Assert.Equal(1 + Array.IndexOf(_shipped.Split('\n'), "time zone: Europe/Paris"), problem.Line);
        Assert.Contains($"`{typed}`", problem.Found, StringComparison.Ordinal);
        Assert.Contains($"Did you mean `{meant}`?", problem.Expected, StringComparison.Ordinal);
    }

    // Times of the day as ISO 8601 writes them; 12-hour clocks have no hour 0, and 12 am is midnight (NIST, "Times of Day FAQs").
    [Theory]
    [InlineData("09:00", 9, 0, false)]
    [InlineData("14.30", 14, 30, false)]
    [InlineData("0:05", 0, 5, false)]
    [InlineData("9:00 am", 9, 0, true)]
    [InlineData("12:15 a.m.", 0, 15, true)]
    [InlineData("12:15 PM", 12, 15, true)]
    [InlineData("2:30pm", 14, 30, true)]
    public void The_start_of_the_class_is_read_as_a_clock_says_it(string typed, int hour, int minute, bool countsTwelve) =>
        Assert.Equal(
            new ClassStart(new(hour, minute), countsTwelve),
            Read(_shipped.Replace("starts: 09:00", $"starts: {typed}", StringComparison.Ordinal)).Model!.Start
        );

    [Theory]
    [InlineData("9")]
    [InlineData("24:00")]
    [InlineData("9:60")]
    [InlineData("0:30 pm")]
    [InlineData("13:00 pm")]
    [InlineData("nine")]
    public void A_start_that_is_no_time_of_the_day_is_refused_at_its_line(string typed)
    {
        var problem = Assert.Single(Read(_shipped.Replace("starts: 09:00", $"starts: {typed}", StringComparison.Ordinal)).Problems);

        Assert.Equal(1 + Array.IndexOf(_shipped.Split('\n'), "starts: 09:00"), problem.Line);
        Assert.Contains($"`{typed}`", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void The_paper_is_read_in_any_case_and_may_be_left_out()
    {
        Assert.Equal(Paper.A4, Read(_shipped).Model!.Paper);
        Assert.Equal(Paper.Letter, Read(_shipped.Replace("paper: A4", "paper: LETTER", StringComparison.Ordinal)).Model!.Paper);
        Assert.Null(Read(_shipped.Replace("paper: A4\n", "", StringComparison.Ordinal)).Model!.Paper);
        Assert.Contains(
            "`A3`",
            Assert.Single(Read(_shipped.Replace("paper: A4", "paper: A3", StringComparison.Ordinal)).Problems).Found,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_class_may_keep_its_start_to_itself() =>
        Assert.Null(Read(_shipped.Replace("starts: 09:00\n", "", StringComparison.Ordinal)).Model!.Start);

    [Fact]
    public void Keys_that_are_known_are_listed_once_each()
    {
        var problem = Assert.Single(
            Read(_shipped.Replace("\nunits:", "\nfavourite pastry: scones\nunits:", StringComparison.Ordinal)).Problems
        );

        var listed = problem.Expected.Replace("Known here: ", "", StringComparison.Ordinal).TrimEnd('.').Split(", ");
        Assert.Contains("time zone", listed);
        Assert.Equal(listed.Distinct(), listed);
    }

    [Fact]
    public void What_the_benches_share_is_read_and_may_be_left_out()
    {
        var profile = Read(_shipped).Model!;
        var bare = Read(
            string.Join(
                '\n',
                _shipped
                    .Split('\n')
                    .Where(line =>
                        !line.StartsWith("oven ", StringComparison.Ordinal) && !line.StartsWith("equipment", StringComparison.Ordinal)
                    )
            )
        ).Model!;

        Assert.Equal((6, 20), (profile.OvenPlaces, profile.OvenHeatUpMinutes));
        Assert.Equal(
            ["6 burners", "12 proofing places", "6 scales", "6 small scales"],
            profile.Equipment.Select(count => count.ToString())
        );
        Assert.Equal((ClassProfile.UsualOvenPlaces, ClassProfile.UsualHeatUpMinutes), (bare.OvenPlaces, bare.OvenHeatUpMinutes));
        Assert.Empty(bare.Equipment);
    }

    [Fact]
    public void What_the_class_wants_changed_is_read_and_may_be_left_out()
    {
        var bare = Read(_shipped).Model!;
        var told = Read(
            _shipped.Replace(
                "units: both",
                "units: both\naltitude formulas: adjusted\nflours: [Bread flour, ap_flour]",
                StringComparison.Ordinal
            )
        ).Model!;

        Assert.Equal((false, null), (bare.AdjustsForAltitude, bare.Flours));
        Assert.True(told.AdjustsForAltitude);
        Assert.Equal(["bread_flour", "ap_flour"], told.Flours);
    }

    [Theory]
    [InlineData(
        "units: both",
        "units: both\naltitude formulas: adjust",
        "altitude formulas",
        "`altitude formulas` is `adjust`",
        "Did you mean `adjusted`?"
    )]
    [InlineData(
        "units: both",
        "units: both\nflours: [Bred flour]",
        "flours",
        "`Bred flour` is not an ingredient",
        "Did you mean `Bread flour`?"
    )]
    [InlineData("units: both", "units: both\nflours: [Fine salt]", "flours", "`Fine salt` is not a flour", "List the flours")]
    [InlineData("6 burners", "6 burnners", "", "`burnners` is not equipment", "Did you mean `burners`?")]
    [InlineData("6 burners", "burners", "", "`equipment` holds `burners`", "how many of what")]
    [InlineData("6 burners", "6 burners of 2 places of 28 cm", "", "how wide a place is of burners", "Only a steamer's round baskets")]
    [InlineData("6 burners", "6 burners, 2 burners", "", "counts the burners a second time", "one number")]
    [InlineData("oven places: 6", "oven places: 0", "", "`oven places` is 0", "from 1 to 10000")]
    [InlineData("oven heat-up: 20 min", "oven heat-up: 20", "", "without a unit", "min")]
    [InlineData("refrigerator: 4 °C", "refrigerator: 8 °C", "", "The refrigerator is at 8 °C", "from 0 °C (32 °F) to 5 °C (41 °F)")]
    [InlineData("refrigerator: 4 °C", "refrigerator: 10 °F", "", "The refrigerator is at -12.2 °C", "from 0 °C (32 °F) to 5 °C (41 °F)")]
    [InlineData("refrigerator: 4 °C", "refrigerator: 4", "", "without a unit", "`4 °C` or `4 °F`")]
    [InlineData("teams: 6", "teams: 25", "", "There are 25 teams for 24 students", "at most as many teams")]
    [InlineData("students: 24", "students: -1", "", "`students` is -1", "from 1 to 10000")]
    [InlineData("altitude: 320 m", "altitude: 320 mm", "", "the unit `mm`", "Did you mean `m`?")]
    [InlineData("altitude: 320 m", "altitude: 99999 m", "", "`altitude` is 99999 m", "from -1500 to 20000")]
    [InlineData("ovens: 3", "oven: 3", "", "`oven` is not a key", "Did you mean `ovens`?")]
    [InlineData("[sesame, tree nuts]", "[sesame, glutn]", "", "`glutn` is not an allergen", "Did you mean `gluten`")]
    [InlineData("[sesame, tree nuts]", "[seasme, pea nuts]", "", "`pea nuts` is not an allergen", "`peanut`", 2)]
    [InlineData("[sesame, tree nuts]", "vegan", "", "`vegan` is not an allergen", "Known are what EU and US law make a label declare")]
    [InlineData("[sesame, tree nuts]", "strawberries", "", "`strawberries` is not an allergen", "read every label")]
    [InlineData("[sesame, tree nuts]", "yes", "", "`yes` is not an allergen", "wheat, spelt")]
    [InlineData("[sesame, tree nuts]", "[\n  sesame,\n  tree-nutz]", "tree-nutz", "`tree-nutz` is not an allergen", "`tree nut`")]
    [InlineData("units: both", "units: metrics", "", "`units` is `metrics`", "Did you mean `metric`?")]
    public void A_mistake_is_named_with_its_line_and_the_way_out(
        string find,
        string replacement,
        string? at,
        string found,
        string remedy,
        int problems = 1
    )
    {
        var broken = Complaint.Break(_shipped, find, replacement);

        Complaint.Among(Read(broken), problems, Complaint.LineFor(at, _shipped, find, broken), found, remedy);
    }
}
