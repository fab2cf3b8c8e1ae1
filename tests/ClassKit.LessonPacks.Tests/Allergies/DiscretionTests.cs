using ClassKit.Baking.Allergens;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Allergies;

namespace ClassKit.LessonPacks.Tests.Allergies;

/// <summary>What students see is the same to the byte, whoever is in the class: in a small class an allergy is a name.</summary>
public sealed class DiscretionTests
{
    /// <summary>By hand, and on purpose not asked of the program: what tells of the class's needs.</summary>
    private static readonly string[] OfNeeds = ["guide.html", "requisition.html", "requisition.xlsx"];

    /// <summary>What an instructor keeps from students: that, and what stands behind the numbers of a tasting.</summary>
    private static readonly string[] InstructorAlone = [.. OfNeeds, "tasting-key.html", "tasting.xlsx"];

    public static TheoryData<string, string> Classes => new()
    {
        { "one-tin-three-lifts", "class.md" },
        { "thin-air-quick-breads", "mountain-class.md" },
    };

    [Theory, MemberData(nameof(Classes))]
    public void Nothing_of_the_class_s_needs_changes_a_byte_of_what_students_see(string lesson, string profile)
    {
        var none = BuiltPack.Adapted(lesson, profile, "allergies: none");
        var all = BuiltPack.Adapted(lesson, profile, $"allergies: [{string.Join(", ", AllergenCatalog.All.Select(allergen => allergen.Name))}, gluten, lactose, coeliac, nuts, shellfish]");

        Assert.Equal(none.Files, all.Files);
        Assert.Equal(none.Notes, all.Notes);
        foreach (var file in none.Files.Except(OfNeeds))
            Assert.True(none.Bytes(file).AsSpan().SequenceEqual(all.Bytes(file)), $"{file} tells of the class's needs.");
        // The comparison would notice: what is to tell of them does differ.
        Assert.All(OfNeeds, file => Assert.False(none.Bytes(file).AsSpan().SequenceEqual(all.Bytes(file)), file));
    }

    /// <summary>The contents say who reads what, and say it as it is.</summary>
    [Fact]
    public void The_contents_tell_which_pages_are_for_the_instructor_alone()
    {
        var rows = BuiltPack.Demo["index.html"].RowsBelow("pages").ToDictionary(row => row.QuerySelector("a")!.GetAttribute("href")!, row => row.Children[1].Words());
        Assert.Equal(InstructorAlone, rows.Where(row => row.Value == "you alone").Select(row => row.Key).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Guide_requisition_and_its_workbook_say_the_same_of_every_bread()
    {
        var pack = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: [gluten, milk]");
        var sheet = pack.Workbook("requisition.xlsx").FindSheet("Allergies")!;
        var written = sheet.Cells.Values.Select(cell => Plain(cell.Stored.Text)).ToList();
        foreach (var file in new[] { "guide.html", "requisition.html" })
        {
            var said = pack[file].QuerySelectorAll("#needs ~ .together li").Select(bread => Plain(bread.Words()[(bread.QuerySelector("strong")!.Words().Length + 1)..])).ToList();
            Assert.Equal(6, said.Count);
            Assert.All(said, bread => Assert.Contains(bread, written));
        }
        foreach (var rule in AllergyCare.For([AllergenWords.Find("gluten")!]))
        {
            Assert.Contains(written, cell => cell.StartsWith(Plain(rule.Text.Written), StringComparison.Ordinal));
            Assert.All(new[] { "guide.html", "requisition.html" }, file => Assert.Contains(Plain(rule.Text.Written), Plain(pack[file].Body!.Words()), StringComparison.Ordinal));
        }

        static string Plain(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>N. Salvatori et al., Clin. Exp. Allergy 38 (2008) 1349–1356, abstract: seven of nine adults allergic to wheat reacted to inhaled flour proteins.</summary>
    [Fact]
    public void With_a_need_that_is_of_flour_nobody_weighs_or_sifts_nearby_and_everybody_is_told_the_same()
    {
        var gluten = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: gluten");
        foreach (var file in new[] { "guide.html", "requisition.html" })
        {
            Assert.Contains("No weighing, no sifting, no mixing and no dusting of flour by the student, and none nearby", gluten[file].Body!.Words(), StringComparison.Ordinal);
            Assert.Contains("Clin. Exp. Allergy 38 (2008) 1349–1356", gluten[file].Body!.Words(), StringComparison.Ordinal);
            Assert.Contains("epinephrine", gluten[file].Body!.Words(), StringComparison.Ordinal);
        }
        foreach (var sheet in gluten["formula-cards.html"].QuerySelectorAll(".card").Append(gluten["handout.html"].QuerySelector("main")!))
            Assert.Contains("With an allergy to wheat one neither weighs nor sifts nor dusts flour, and is not near while others do", sheet.Words(), StringComparison.Ordinal);
        foreach (var (file, page) in gluten.Pages)
            Assert.False(page.Body!.Words().Contains("weighs, measures and records", StringComparison.Ordinal), file);
        Assert.DoesNotContain("none nearby", BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: milk")["guide.html"].Body!.Words(), StringComparison.Ordinal);
    }
}
