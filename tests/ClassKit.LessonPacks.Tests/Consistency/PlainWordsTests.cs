using System.Text.RegularExpressions;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>Nobody but a program reads a name with an underscore, a setting's line or a code: on pages and in workbooks of a pack there are words.</summary>
public sealed partial class PlainWordsTests
{
    public static TheoryData<string> All => Kitchens.All;

    [Theory]
    [MemberData(nameof(All))]
    public void No_page_and_no_workbook_of_a_pack_shows_a_name_of_a_program(string kitchen)
    {
        var pack = Kitchens.Of(kitchen);
        foreach (var (file, page) in pack.Pages)
        {
            foreach (var script in page.QuerySelectorAll("script, style").ToList())
                script.Remove();
            Assert.Equal((file, ""), (file, OfProgram().Match(page.Body!.Words()).Value));
        }
        foreach (var file in pack.Files.Where(file => file.EndsWith(".xlsx", StringComparison.Ordinal)))
            Assert.All(BuiltPack.Texts(pack.Bytes(file)), text => Assert.Equal((file, ""), (file, OfProgram().Match(text).Value)));
    }

    [GeneratedRegex(@"\b[a-z]+_[a-z]+\b|\baltitude formulas:|\b(below-scale|fat-sets|file-name-differs|no-teams)\b")]
    private static partial Regex OfProgram();
}
