using ClassKit.House.Tests.Reading;

namespace ClassKit.House.Tests.Rules;

/// <summary>Pure rooms find facts, and Wording says them: no sentence is put together where something is worked out.</summary>
public class ProseTests
{
    /// <summary>The pure rooms: all that find facts.</summary>
    private static readonly string[] Rooms =
    [
        "ClassKit.Baking",
        "ClassKit.BenchSums",
        "ClassKit.Lessons",
        "ClassKit.CellFormulas",
        "ClassKit.BenchPlans",
        "ClassKit.BenchSolver",
        "ClassKit.Exercises",
        "ClassKit.Grading",
        "ClassKit.Terms",
        "ClassKit.ItemBanks",
        "ClassKit.Notes",
    ];

    /// <summary>Folders in which text stands that is no sentence made of a fact, each with its reason.</summary>
    private static Dictionary<string, KnownProse> Known { get; } =
        KnownProse.In(File.ReadLines(Repository.PathOf("tests/ClassKit.House.Tests/known-prose.txt")));

    private static readonly ILookup<string, string> Found = Rooms.SelectMany(Prose.In).ToLookup(piece => piece.Folder, piece => piece.Text);

    [Fact]
    public void No_pure_room_makes_sentences_that_it_did_not_make_before() =>
        Assert.All(Found.Where(folder => !(Known.TryGetValue(folder.Key, out var known) && known.Allows(folder.Count()))), folder =>
            Assert.Fail($"{folder.Key} {folder.Count()}:\n  {string.Join("\n  ", folder)}")
        );

    [Fact]
    public void What_is_known_is_still_there_and_says_why() => Assert.All(Known, folder =>
        {
            Assert.True(
                folder.Value.Pieces is { } pieces ? Found[folder.Key].Count() == pieces : Found[folder.Key].Any(),
                $"{folder.Key} {Found[folder.Key].Count()}: write it so, or take the line out"
            );
            Assert.True(folder.Value.Why.Length > 20, $"{folder.Key}: why does it stand there?");
        });

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
