using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Allergies;

/// <summary>Nothing that ClassKit prints says or implies that something is without an allergen: nobody but a label knows.</summary>
public sealed partial class NoPromiseTests
{
    public static TheoryData<string, string> Lessons =>
        new()
        {
            { "one-tin-three-lifts", "class.md" },
            { "thin-air-quick-breads", "mountain-class.md" },
            { "no-oven-in-the-house", "no-oven-class.md" },
            { "one-dough-three-clocks", "long-morning-class.md" },
        };

    [Theory, MemberData(nameof(Lessons))]
    public void No_page_and_no_workbook_promises_anything_for_any_word_of_the_vocabulary(string lesson, string profile)
    {
        var read = LessonReader.Read(Path.Combine(Repository.Root, "lessons", lesson)).Model!;
        var usual = ClassProfileReader.Read(Path.Combine(Repository.Root, "demo-cohort", profile)).Model!;
        var planned = BuiltPack.Model(read, usual);
        var seen = new HashSet<string>();
        // One class without needs, one for all words together, and with the first lesson one for each word, of which only the pages of
        // needs tell (DiscretionTests); what repeats is read once.
        var alone = lesson == "one-tin-three-lifts" ? AllergenWords.All.Select(word => new[] { word }) : [];
        foreach (var needs in alone.Append([.. AllergenWords.All]).Append([]))
        {
            var pack = planned with { Class = usual with { Allergies = needs } };
            var isOfOneWord = needs.Length == 1;
            foreach (
                var (file, sentence) in Pages
                    .HtmlPages.Pack(pack)
                    .Where(page => !isOfOneWord || DiscretionTests.OfNeeds.Contains(page.FileName))
                    .SelectMany(page => Sentences(page.Html).Select(sentence => (page.FileName, sentence)))
                    .Where(said => seen.Add(said.sentence))
            )
                Assert.False(IsPromise(sentence), $"{file}, allergies {string.Join(", ", needs.Select(need => need.Word))}: {sentence}");
            if (isOfOneWord)
                continue;
            foreach (
                var sentence in BuiltPack.Texts(Workbooks.Requisitions.RequisitionWriter.Write(pack)).SelectMany(Split).Where(seen.Add)
            )
                Assert.False(IsPromise(sentence), $"requisition.xlsx: {sentence}");
        }
        Assert.True(seen.Count > 500, $"{seen.Count}");
    }

    /// <summary>A bread of which nothing is declared says that the labels are to be read, on every page.</summary>
    [Fact]
    public void A_bread_of_which_nothing_is_declared_promises_nothing_either()
    {
        var lesson = LessonReader.Read(Path.Combine(Repository.Root, "lessons", "thin-air-quick-breads")).Model!;
        var rice = lesson.Formulas[0] with
        {
            Formula = lesson.Formulas[0].Formula with
            {
                Lines =
                [
                    new(IngredientCatalog.Get("rice_flour"), 100),
                    new(IngredientCatalog.Get("water"), 80),
                    new(IngredientCatalog.Get("baking_soda"), 1),
                    new(IngredientCatalog.Get("salt"), 2),
                ],
            },
            Surfaces = [],
        };
        var pack = BuiltPack.Model(
            lesson with
            {
                Formulas = [rice],
                TalkingPoints = [],
                Demonstrations = [],
            },
            BuiltPack.DemoPack.Class with
            {
                Allergies = [AllergenWords.Find("wheat")!, AllergenWords.Find("sesame")!],
                Prices = null,
            }
        );

        foreach (var page in Pages.HtmlPages.Pack(pack))
            Assert.All(Sentences(page.Html), sentence => Assert.False(IsPromise(sentence), $"{page.FileName}: {sentence}"));
        var guide = new HtmlParser()
            .ParseDocument(Pages.HtmlPages.Pack(pack).Single(page => page.FileName == "guide.html").Html)
            .Body!.Words();
        Assert.Contains(
            "Declared in no ingredient here, which proves nothing. Not known: rice flour (it is often milled and packed where wheat is). Read every label.",
            guide,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Gluten_over_wheat_bread_is_declared_and_no_longer_passed_over()
    {
        var guide = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: [gluten]")["guide.html"].Body!.Words();
        Assert.Contains("Gluten (wheat, spelt, khorasan wheat, rye, barley, oats)", guide, StringComparison.Ordinal);
        Assert.Contains("Popovers. Declared in all-purpose flour (wheat): not to be handled or tasted.", guide, StringComparison.Ordinal);
        Assert.Contains("malted barley flour may be added", guide, StringComparison.Ordinal);
    }

    /// <summary>The net itself holds: what the program once said, and what others say, is caught.</summary>
    [Theory]
    [InlineData("None of the ingredients is declared to hold them, read the labels.")]
    [InlineData("Allergens: none declared.")]
    [InlineData("The rolls are gluten-free.")]
    [InlineData("Free of nuts.")]
    [InlineData("Safe for a student with an egg allergy.")]
    [InlineData("It contains no milk.")]
    [InlineData("Made without eggs.")]
    [InlineData("No allergens.")]
    [InlineData("The bread does not contain sesame.")]
    public void The_net_catches_promises(string sentence) => Assert.True(IsPromise(sentence));

    private static bool IsPromise(string sentence) =>
        Subject().IsMatch(sentence) && Promise().IsMatch(sentence) && !ProcessFree().IsMatch(sentence);

    private static IEnumerable<string> Sentences(string html)
    {
        var page = new HtmlParser().ParseDocument(html);
        foreach (var silent in page.QuerySelectorAll("style, script:not([type='application/ld+json'])").ToList())
            silent.Remove();
        return page.QuerySelectorAll("p, li, td, th, dd, dt, h1, h2, h3, h4, caption, title, text, desc, script")
            .Select(element => element.Words())
            .SelectMany(Split);
    }

    private static IEnumerable<string> Split(string text) =>
        EndOfSentence().Split(text).Select(sentence => sentence.Trim()).Where(sentence => sentence.Length > 0);

    [GeneratedRegex(@"(?<=[.!?;:])\s+")]
    private static partial Regex EndOfSentence();

    /// <summary>Allergens in any of their everyday words, and what the sentence may call them.</summary>
    [GeneratedRegex(
        @"\b(allerg\w*|gluten|wheat|barley|rye|oats?|eggs?|milk|dairy|lactose|butter|nuts?|almonds?|peanuts?|sesame|soya?|fish|shellfish|crustaceans?|molluscs?|mustard|celery|lupin|sulphites?|declared|ingredients?|student)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Subject();

    [GeneratedRegex(
        @"\bfree\b|-free\b|\bnone\b|\bsafe(ly)?\b|\bharmless\b|\bcontains? no\b|\bnot contain\b|\bholds no\b|\bno (allergens?|gluten|wheat|eggs?|milk|dairy|nuts?)\b|\b(made|bread|recipe) without\b|\bsuitable\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Promise();

    /// <summary>Gas is set free, a burner is free, dust flies nearby: not of allergens.</summary>
    [GeneratedRegex(
        @"\b(set|sets|freed?|setting) free\b|\bnone nearby\b|\b(burners?|ovens?|places?|scales?|mixers?) free\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex ProcessFree();
}
