using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Pure rooms find facts, and Wording says them: no sentence is put together where something is worked out.</summary>
public class ProseTests
{
    /// <summary>The rooms that find facts. Workings, cautions and advice of Baking, BenchSums and Lessons stand beside their sources there, and are not looked at yet.</summary>
    private static readonly string[] Rooms =
    [
        "ClassKit.CellFormulas", "ClassKit.BenchPlans", "ClassKit.Exercises", "ClassKit.Grading", "ClassKit.Terms", "ClassKit.ItemBanks", "ClassKit.Notes",
    ];

    /// <summary>Folders in which prose still stands, with how many pieces: none may be added, and whoever takes some out writes the smaller number.</summary>
    private static Dictionary<string, int> Known { get; } = File.ReadLines(Repository.PathOf("tests/ClassKit.House.Tests/known-prose.txt"))
        .Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split(' ')).ToDictionary(words => words[0], words => int.Parse(words[1], System.Globalization.CultureInfo.InvariantCulture), StringComparer.Ordinal);

    [Fact]
    public void No_pure_room_makes_sentences_that_it_did_not_make_before()
    {
        var found = Rooms.SelectMany(Prose.In).ToLookup(piece => piece.Folder, piece => piece.Text);
        Assert.All(found, folder => Assert.True(folder.Count() <= Known.GetValueOrDefault(folder.Key), $"{folder.Key} {folder.Count()}:\n  {string.Join("\n  ", folder)}"));
        Assert.All(Known, folder => Assert.True(found[folder.Key].Count() == folder.Value, $"{folder.Key} {found[folder.Key].Count()}: write the smaller number into known-prose.txt"));
    }

    [Theory]
    [InlineData("the lesson is ", true)]
    [InlineData(" students share a variant", true)]
    [InlineData(", ", false)]
    [InlineData("min", false)]
    [InlineData("<mo form=\"prefix\">", false)]
    public void Words_in_a_row_are_told_from_signs_and_units(string text, bool isProse) => Assert.Equal(isProse, Prose.HasWords(text));

    [Theory]
    [InlineData("No plan was found, and it was not proven that there is none.", true)]
    [InlineData("Cream of tartar", false)]
    [InlineData("dough temperature", false)]
    public void Sentences_are_told_from_names(string text, bool isOne) => Assert.Equal(isOne, Prose.IsSentence(text));
}
