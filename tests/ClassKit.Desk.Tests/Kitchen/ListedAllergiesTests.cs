using System.Net;
using ClassKit.Content.Classes;
using ClassKit.Content.Rosters;
using ClassKit.Desk.Kitchen;
using ClassKit.Desk.Tests.Tools;

namespace ClassKit.Desk.Tests.Kitchen;

/// <summary>A school's column of allergies is not passed over in silence, and whose they are is said nowhere. Such lists: common practice, no source.</summary>
public sealed class ListedAllergiesTests(RunningDesk desk) : IClassFixture<RunningDesk>
{
    private const string List =
        "Student No\tName\tAllergies / notes\n"
        + "20413\tMei Chen\tSevere peanut allergy, EpiPen in the office\n"
        + "20414\tAwa Diallo\tnone\n"
        + "20415\tLeo Park\ttree nuts; Milk\n"
        + "20416\tIvy Hall\tvegetarian\n"
        + "20417\tMax Wood\tasthma, ask Mrs Wood\n";

    [Fact]
    public async Task What_the_column_says_is_offered_to_the_class_and_never_by_name()
    {
        var profile = Path.Combine(desk.Folder.Root, "class.md");
        var before = ClassProfileReader.Read(profile).Model!.Allergies.Select(word => word.Word).ToList();

        var page = await PasteAsync();

        foreach (var word in new[] { "peanut", "tree nut", "milk" }.Except(before))
            Assert.Contains($"name=\"allergy\" value=\"{word}\" checked", page, StringComparison.Ordinal);
        Assert.Contains(
            "No allergen that is known here:</strong> “asthma”; “EpiPen in the office”; “vegetarian”.",
            page,
            StringComparison.Ordinal
        );
        Assert.Contains("1 longer note says something else", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Mrs Wood", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Left aside", page, StringComparison.Ordinal);

        // What is not ticked is not added, nor what the list does not say.
        Assert.Equal(
            303,
            await desk.StatusAsync(
                desk.Request(
                    "class/class/roster/take",
                    ("who", "new"),
                    ("only-taken", "yes"),
                    ("allergy", "peanut"),
                    ("allergy", "milk"),
                    ("allergy", "celery")
                )
            )
        );
        Assert.Equal(
            [.. before.Union(["peanut", "milk"]).Order()],
            ClassProfileReader.Read(profile).Model!.Allergies.Select(word => word.Word).Order()
        );
        // Nor does what nothing reads lie in the folder.
        Assert.StartsWith(
            "Student No\tName\n20413\tMei Chen\n",
            await File.ReadAllTextAsync(Path.Combine(desk.Folder.Root, "roster.csv")),
            StringComparison.Ordinal
        );
        Assert.Contains("tree nut", await PasteAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain("value=\"peanut\"", await PasteAsync(), StringComparison.Ordinal);
    }

    /// <summary>The words of one cell among the words of other cells: the order of the list would say whose they are.</summary>
    [Fact]
    public void Cells_are_in_the_order_of_their_letters()
    {
        var file = Path.Combine(desk.Folder.Root, "other.csv");
        File.WriteAllText(file, "name,Allergens\nAda Berg,sesame\nBo Cole,celery\nKit Dunn,Sesame\n");
        var read = RosterReader.Read(file).Model!;
        File.Delete(file);
        Assert.Equal(["celery", "sesame"], read.Origin!.Allergies!.Cells);
        Assert.Equal(["celery", "sesame"], ListedAllergies.Of(read)!.Words.Select(word => word.Word));
    }

    private async Task<string> PasteAsync()
    {
        using var answer = await desk.Client.SendAsync(desk.Request("class/class/roster/paste", ("names", List)));
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }
}
