using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Observations;

/// <summary>A prediction is one only while its answer is not in sight: common practice of teaching by experiment, no source. What is expected stands on another side than the guess.</summary>
public sealed class GuessFirstTests
{
    public static TheoryData<string> All => Kitchens.All;

    [Theory]
    [MemberData(nameof(All))]
    public void No_expected_height_or_width_stands_where_the_guess_is_written_or_on_the_handout(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        var page = pack["observations.html"];
        var expected = page.QuerySelectorAll(".expects tbody tr").Where(row => row.Words().StartsWith("Height", StringComparison.Ordinal) || row.Words().StartsWith("Width", StringComparison.Ordinal) || row.Words().StartsWith("Bake loss", StringComparison.Ordinal))
            .SelectMany(row => row.QuerySelectorAll(".expected").Select(cell => cell.Words())).Where(text => text != "–").ToList();
        Assert.NotEmpty(expected);
        foreach (var words in page.QuerySelectorAll(".observed").Append(pack["handout.html"].Body!).Concat(pack["formula-cards.html"].QuerySelectorAll("article")).Select(part => part.Words()))
            Assert.All(expected, text => Assert.DoesNotContain(text, words, StringComparison.Ordinal));
        Assert.Empty(pack["handout.html"].QuerySelectorAll(".cut"));
    }

    /// <summary>How sure we are of a source is for the instructor: a student reads a publication or nothing.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void A_handout_does_not_tell_students_how_sure_a_source_is(string kitchen)
    {
        Assert.DoesNotMatch("common practice|from memory|no source", Kitchens.Of(kitchen)["handout.html"].Body!.Words());
        Assert.Contains("common practice", Kitchens.Of(kitchen)["guide.html"].Body!.Words(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_bread_has_a_line_for_the_guess_before_its_table_and_the_other_side_comes_behind_them_all(string kitchen)
    {
        var page = Kitchens.Of(kitchen)["observations.html"];
        foreach (var bread in page.QuerySelectorAll(".observed"))
            Assert.StartsWith("My guess", bread.QuerySelector("p")!.Words(), StringComparison.Ordinal);
        var other = page.QuerySelector(".new-sheet")!;
        Assert.Equal(page.QuerySelectorAll(".expects").Length, other.QuerySelectorAll(".expects").Length);
        Assert.All(page.QuerySelectorAll(".observed"), bread => Assert.True(bread.CompareDocumentPosition(other).HasFlag(DocumentPositions.Following)));
    }
}
