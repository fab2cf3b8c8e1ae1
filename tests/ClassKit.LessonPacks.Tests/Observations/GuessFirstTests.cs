using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Observations;

/// <summary>
/// A prediction is one only while its answer is not in sight: common practice of teaching by experiment, no source. What is expected stands
/// on another side than the guess.
/// </summary>
public sealed class GuessFirstTests
{
    public static TheoryData<string> All => Kitchens.All;

    [Theory]
    [MemberData(nameof(All))]
    public void No_expected_height_or_width_stands_where_the_guess_is_written_or_on_the_handout(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var page = pack["observations.html"];
        var expected = page.QuerySelectorAll(".expects tbody tr")
            .Where(row =>
                row.Words().StartsWith("Height", StringComparison.Ordinal)
                || row.Words().StartsWith("Width", StringComparison.Ordinal)
                || row.Words().StartsWith("Bake loss", StringComparison.Ordinal)
            )
            .SelectMany(row => row.QuerySelectorAll(".expected").Select(cell => cell.Words()))
            .Where(text => text != "–")
            .ToList();
        Assert.NotEmpty(expected);
        foreach (
            var words in page.QuerySelectorAll(".observed")
                .Append(pack["handout.html"].Body!)
                .Concat(pack["formula-cards.html"].QuerySelectorAll("article"))
                .Select(part => part.Words())
        )
            Assert.All(expected, text => Assert.DoesNotContain(text, words, StringComparison.Ordinal));
        Assert.Empty(pack["handout.html"].QuerySelectorAll(".cut"));
    }

    /// <summary>How sure we are of a source is for the instructor: a student reads a publication or nothing.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Pages_that_students_work_by_do_not_tell_how_sure_a_source_is(string kitchen)
    {
        foreach (var file in new[] { "handout.html", "stations.html", "run-sheets.html", "bench-plan.html", "projector.html" })
            Assert.DoesNotMatch("common practice|from memory|no source", Kitchens.Of(kitchen)[file].Body!.Words());
        Assert.Contains("common practice", Kitchens.Of(kitchen)["guide.html"].Body!.Words(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_team_guesses_of_every_bread_before_it_measures_and_the_other_side_is_the_back_of_its_own_sheet(string kitchen)
    {
        var sheets = Kitchens.Of(kitchen)["observations.html"].QuerySelectorAll(".observed");
        Assert.NotEmpty(sheets);
        foreach (var sheet in sheets)
        {
            var grid = sheet.QuerySelector(".sheet-grid")!;
            Assert.All(grid.Breads(), bread => Assert.Matches("^My guess: height", grid.Of(bread)[0].Row));
            Assert.All(grid.Breads(), bread => Assert.All(grid.Of(bread), row => Assert.NotEmpty(row.Cells)));
            var back = sheet.NextElementSibling!;
            Assert.Contains("new-sheet", back.ClassList);
            Assert.Equal(grid.Breads(), back.QuerySelector(".expects")!.Breads());
        }
    }

    /// <summary>
    /// A number without its unit says nothing a week later; a rate of loss needs its rule. By definition: what is lost over what there was.
    /// </summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Every_cell_to_write_in_says_its_unit_and_a_loss_how_it_is_worked_out(string kitchen)
    {
        foreach (var row in Kitchens.Of(kitchen)["observations.html"].QuerySelectorAll(".sheet-grid .measures tr"))
        {
            Assert.All(row.QuerySelectorAll("td"), cell => Assert.Matches("^(g|oz|mm|in|%|°C|°F|–)$", cell.Words()));
            Assert.Equal(
                row.QuerySelector("th")!.Words().Contains("oss", StringComparison.Ordinal),
                row.QuerySelector("th")!.Words().EndsWith("(before − after) ÷ before × 100", StringComparison.Ordinal)
            );
        }
    }
}
