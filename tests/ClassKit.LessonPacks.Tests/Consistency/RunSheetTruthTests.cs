using AngleSharp.Dom;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// What an instructor must do at an oven has its line and its minute; from the practice of a teaching kitchen, no source.
/// </summary>
public sealed class RunSheetTruthTests
{
    public static TheoryData<string> All => Kitchens.All;

    public static TheoryData<string> OfThreeLifts => Kitchens.OfThreeLifts;

    [Theory]
    [MemberData(nameof(All))]
    public void Every_sheet_begins_with_the_class(string kitchen)
    {
        foreach (var sheet in Kitchens.Of(kitchen)["run-sheets.html"].QuerySelectorAll(".run-sheet"))
            Assert.Single(sheet.QuerySelectorAll("tbody tr"), row =>
                row.MinuteUnder("At") == 0 && row.Under("What").StartsWith("Begin", StringComparison.Ordinal)
            );
    }

    /// <summary>Whatever goes into an oven comes out of it again, and the instructor's sheet says when.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void What_goes_into_an_oven_comes_out_of_it(string kitchen)
    {
        var rows = Instructor(kitchen);
        var into = rows.Where(row => row.Under("What").StartsWith("Into oven", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(into);
        foreach (var row in into)
        {
            var oven = row.Under("What")["Into ".Length..];
            Assert.Contains(rows, later =>
                later.Under("What") == "Out of " + oven
                && later.Under("Bread") == row.Under("Bread")
                && later.MinuteUnder("At") > row.MinuteUnder("At")
            );
        }
    }

    /// <summary>A door that opens for six tins at once loses the oven's heat: hot tins are filled by twos.</summary>
    [Theory]
    [MemberData(nameof(OfThreeLifts))]
    public void Hot_tins_come_out_by_twos_and_then_the_door_is_shut(string kitchen)
    {
        var rows = Instructor(kitchen);
        var turns = rows.Where(row => row.Under("What").StartsWith("Tins out of", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(turns);
        Assert.All(turns, row => Assert.InRange(row.Under("Mind").Split(';')[0].Count(char.IsDigit), 1, 2));
        Assert.True(
            rows.Where(row => row.Under("What").StartsWith("All tins in", StringComparison.Ordinal)).Max(row => row.MinuteUnder("At"))
                > turns.Max(row => row.MinuteUnder("At"))
        );
    }

    /// <summary>
    /// Steam that stays in a shell softens it: pierced within a minute of the oven. B. Lowe, Experimental Cookery, "Popovers", from memory.
    /// </summary>
    [Theory]
    [MemberData(nameof(OfThreeLifts))]
    public void Popovers_are_pierced_as_they_leave_the_oven(string kitchen)
    {
        foreach (
            var body in Kitchens
                .Of(kitchen)["bench-plan.html"]
                .QuerySelectorAll("table:has(.group) tbody")
                .Where(body => body.QuerySelector(".group")!.Words() == "Popovers")
        )
        {
            var steps = body.QuerySelectorAll("tr").Where(row => row.Children.Length > 2).ToDictionary(row => row.Children[0].Words());
            Assert.InRange(steps["9. Pierce"].MinuteUnder("From") - steps["8. Bake to dry"].MinuteUnder("To"), 0, 1);
        }
    }

    [Theory]
    [MemberData(nameof(OfThreeLifts))]
    public void The_tasting_has_its_minutes_on_every_sheet(string kitchen)
    {
        foreach (var sheet in Kitchens.Of(kitchen)["run-sheets.html"].QuerySelectorAll(".run-sheet"))
        {
            var blind = Assert.Single(sheet.QuerySelectorAll("tbody tr"), row =>
                row.Under("What").StartsWith("Blind tasting", StringComparison.Ordinal)
            );
            Assert.True(PageText.Clock(blind.Under("Until")) - blind.MinuteUnder("At") >= 8);
        }
    }

    /// <summary>Who notes when a bread begins to move stands at the window from when the first is in.</summary>
    [Fact]
    public void The_observer_is_sent_when_the_first_tins_go_in()
    {
        var guide = BuiltPack.Demo["guide.html"];
        var sent = guide.QuerySelectorAll("tbody tr").First(row => row.Words().Contains("sends one observer", StringComparison.Ordinal));
        Assert.Contains("Popovers: Bake hot", sent.Words(), StringComparison.Ordinal);
    }

    private static List<IElement> Instructor(string kitchen) =>
        [.. Kitchens.Of(kitchen)["run-sheets.html"].QuerySelector("[aria-labelledby=instructor]")!.QuerySelectorAll("tbody tr")];
}
