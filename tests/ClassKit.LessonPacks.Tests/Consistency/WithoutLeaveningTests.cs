using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>A bread that nothing leavens has pages as any other, and none of them forecasts a rise. Common practice, no source.</summary>
public sealed class WithoutLeaveningTests
{
    private const string Short = "Pan rounds";

    private static readonly BuiltPack Pack = BuiltPack.EditedNoOven(
        (file, text) =>
            file == "pan_rounds.md"
                ? text.Replace("leavening: steam", "leavening: none", StringComparison.Ordinal)
                    .Replace("structure: pocket", "structure: crumb", StringComparison.Ordinal)
                : text
    );

    [Fact]
    public void The_comparison_says_why_it_has_no_curve_and_shows_none()
    {
        var page = Pack["comparison.html"];

        Assert.Contains(
            $"{Short}: what it holds cannot be predicted. Nothing in it makes gas",
            page.Body!.Words(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(page.QuerySelectorAll("#time ~ figure, #time ~ * figure").Select(figure => figure.Words()), words =>
            words.Contains(Short, StringComparison.Ordinal)
        );
        Assert.Contains("by air and steam alone", page.Body!.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void Nowhere_does_it_rise_by_steam_or_yeast()
    {
        foreach (var page in new[] { "cards.html", "index.html", "projector.html", "guide.html" }.Where(Pack.Files.Contains))
            Assert.DoesNotMatch(
                @"[Rr]ises by (steam|yeast)",
                string.Join(
                    ' ',
                    Pack[page]
                        .QuerySelectorAll("section, article")
                        .Select(part => part.Words())
                        .Where(words =>
                            words.Contains(Short, StringComparison.Ordinal)
                            && !words.Contains("Steamed milk buns", StringComparison.Ordinal)
                        )
                )
            );
    }

    [Fact]
    public void The_observation_sheet_asks_for_its_mass_and_forecasts_no_height()
    {
        var sheet = Pack["observations.html"].Body!.Words();

        Assert.Contains(Short, sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", sheet, StringComparison.Ordinal);
    }
}
