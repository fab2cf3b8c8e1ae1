using System.Text.RegularExpressions;
using AngleSharp.Dom;
using ClassKit.Content.Lessons;
using ClassKit.Exercises.Solutions;
using ClassKit.LessonPacks.Tests.Samples;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>
/// Nobody but a program reads a name with an underscore, a setting's line or a code: on pages and in workbooks of a pack there are words.
/// </summary>
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
            // A copy: other tests read the same pages, scripts and all.
            var body = (IElement)page.Body!.Clone(deep: true);
            foreach (var script in body.QuerySelectorAll("script, style").ToList())
                script.Remove();
            Assert.Equal((file, ""), (file, OfProgram().Match(body.Words()).Value));
        }
        foreach (var file in pack.Files.Where(file => file.EndsWith(".xlsx", StringComparison.Ordinal)))
            Assert.All(BuiltPack.Texts(pack.Bytes(file)), text => Assert.Equal((file, ""), (file, OfProgram().Match(text).Value)));
    }

    /// <summary>A worked solution is read by students: its names are words, and a unit is written as one.</summary>
    [Fact]
    public void No_worked_solution_shows_an_abbreviation()
    {
        foreach (var exercise in LessonReader.Read(Repository.PathOf("lessons", "one-tin-three-lifts")).Model!.Exercises)
        {
            foreach (var part in exercise.Parts)
            {
                var words = Regex.Replace(WorkedSolution.MethodOf(exercise, part), "<[^>]+>", " ").Replace('\u00A0', ' ');
                Assert.Matches("[a-z]{3}", words);
                Assert.DoesNotMatch(@"_|\b(temp|pct|vol|[cf])\b", words);
            }
        }
    }

    [GeneratedRegex(@"\b[a-z]+_[a-z]+\b|\baltitude formulas:|\b(below-scale|fat-sets|file-name-differs|no-teams)\b")]
    private static partial Regex OfProgram();
}
