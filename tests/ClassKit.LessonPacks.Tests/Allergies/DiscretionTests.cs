using ClassKit.Baking.Allergens;
using ClassKit.LessonPacks.Tests.Samples;
using ClassKit.Lessons.Allergies;

namespace ClassKit.LessonPacks.Tests.Allergies;

/// <summary>What students see is the same to the byte, whoever is in the class: in a small class an allergy is a name.</summary>
public sealed class DiscretionTests
{
    /// <summary>By hand, and on purpose not asked of the program: what tells of the class's needs.</summary>
    internal static readonly string[] OfNeeds = ["guide.html"];

    /// <summary>What an instructor keeps from students: that, and what stands behind the numbers of a tasting.</summary>
    private static readonly string[] InstructorAlone = [.. OfNeeds, "tasting-key.html", "tasting.xlsx"];

    public static TheoryData<string, string> Classes =>
        new()
        {
            { "one-tin-three-lifts", "class.md" },
            { "thin-air-quick-breads", "mountain-class.md" },
            { "no-oven-in-the-house", "no-oven-class.md" },
            { "one-dough-three-clocks", "long-morning-class.md" },
        };

    [Theory, MemberData(nameof(Classes))]
    public void Nothing_of_the_class_s_needs_changes_a_byte_of_what_students_see(string lesson, string profile)
    {
        var none = BuiltPack.Adapted(lesson, profile, "allergies: none");
        var all = BuiltPack.Adapted(
            lesson,
            profile,
            $"allergies: [{string.Join(", ", AllergenCatalog.All.Select(allergen => allergen.Name))}, gluten, lactose, coeliac, nuts, shellfish]"
        );

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
        var rows = BuiltPack
            .Demo["index.html"]
            .RowsBelow("pages")
            .ToDictionary(row => row.QuerySelector("a")!.GetAttribute("href")!, row => row.Children[1].Words());
        Assert.Equal(InstructorAlone, rows.Where(row => row.Value == "you alone").Select(row => row.Key).Order(StringComparer.Ordinal));
        Assert.Equal(
            ["requisition.html", "requisition.xlsx"],
            rows.Where(row => row.Value == "you and whoever orders").Select(row => row.Key).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_guide_says_of_every_bread_and_of_what_is_shown_what_is_to_do()
    {
        var guide = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: [gluten, milk]")["guide.html"];
        // By hand: three breads for each of two needs; milk is warmed to be shown, and the control holds flour and milk.
        Assert.Equal(6 + 3, guide.QuerySelectorAll("#needs ~ .together li").Length);
        Assert.All(AllergyCare.For([AllergenWords.Find("gluten")!]), rule =>
            Assert.Contains(
                string.Join(' ', rule.Text.Written.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
                guide.Body!.Words(),
                StringComparison.Ordinal
            )
        );
    }

    /// <summary>What a storekeeper needs is what each bread holds: declared and not known, and nothing of who must keep away.</summary>
    [Fact]
    public void The_requisition_says_what_the_breads_hold_and_nothing_of_anybody()
    {
        var pack = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: [sesame, tree nuts]");
        var page = pack["requisition.html"].Body!.Words();
        foreach (var text in BuiltPack.Texts(pack.Bytes("requisition.xlsx")).Append(page))
            Assert.DoesNotMatch("keep away|Not known|Read every label|the student", text);
        Assert.Contains("What must be declared", page, StringComparison.Ordinal);
        Assert.Null(pack.Workbook("requisition.xlsx").FindSheet("Allergies"));
    }

    /// <summary>
    /// N. Salvatori et al., Clin. Exp. Allergy 38 (2008) 1349–1356, abstract: seven of nine adults allergic to wheat reacted to inhaled
    /// flour proteins.
    /// </summary>
    [Fact]
    public void With_a_need_that_is_of_flour_nobody_weighs_or_sifts_nearby_and_everybody_is_told_the_same()
    {
        var gluten = BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: gluten");
        var guide = gluten["guide.html"].Body!.Words();
        Assert.Contains(
            "No weighing, no sifting, no mixing and no dusting, by the student or nearby, of flour that holds it or may hold it",
            guide,
            StringComparison.Ordinal
        );
        Assert.Contains("Clin. Exp. Allergy 38 (2008) 1349–1356", guide, StringComparison.Ordinal);
        Assert.Contains("epinephrine", guide, StringComparison.Ordinal);
        foreach (var sheet in gluten["formula-cards.html"].QuerySelectorAll(".card").Append(gluten["handout.html"].QuerySelector("main")!))
            Assert.Contains(
                "With an allergy to wheat, or to another flour, one neither weighs nor sifts nor dusts it, and is not near while others do",
                sheet.Words(),
                StringComparison.Ordinal
            );
        foreach (var (file, page) in gluten.Pages)
            Assert.False(page.Body!.Words().Contains("weighs, measures and records", StringComparison.Ordinal), file);
        Assert.DoesNotContain(
            "none nearby",
            BuiltPack.Adapted("one-tin-three-lifts", "class.md", "allergies: milk")["guide.html"].Body!.Words(),
            StringComparison.Ordinal
        );
    }
}
