using System.Text.RegularExpressions;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.Lessons;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Terms;

namespace ClassKit.Content.Tests;

/// <summary>
/// The handbooks beside the content name every key and section that a reader knows and no other, and every example in them is read.
/// </summary>
public sealed partial class HandbookTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string, string, string> Kinds =>
        new()
        {
            { "lessons", "A lesson: lesson.md", "lesson.md" },
            { "lessons", "A bread: formulas/name.md", "bun.md" },
            { "lessons", "An exercise: exercises/name.md", "task.md" },
            { "rubrics", "Marks for calculations", "marks.md" },
            { "rubrics", "A rule for grades", "rule.md" },
            { "demo-cohort", "The class and its kitchen: class.md", "class.md" },
            { "demo-cohort", "The price list: prices.md", "prices.md" },
            { "demo-cohort", "A term: term.md", "term.md" },
        };

    /// <summary>Asked for a key that nobody knows, a reader lists those that it does.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_key_that_a_reader_knows_has_its_row(string handbook, string heading, string file)
    {
        var known = KnownKeys(Read(file, "---\nqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqq: 1\n---\n\n# Title\n\nText.\n"));

        Assert.NotEmpty(known);
        Assert.Equal(known.Order(StringComparer.Ordinal), Rows(handbook, heading).Select(row => row.Key).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_example_is_read(string handbook, string heading, string file)
    {
        var rows = Rows(handbook, heading);

        var problems = Read(file, $"---\n{string.Concat(rows.Select(row => $"{row.Key}: {row.Example}\n"))}---\n\n# Title\n\nText.\n");

        Assert.DoesNotContain(problems, problem =>
            problem.Line > 1
            && problem.Line <= rows.Count + 1
            && !problem.Found.StartsWith("There is no file", StringComparison.Ordinal)
            && !problem.Found.StartsWith("There is no picture", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(problems, problem => problem.Found.Contains("is missing at the top", StringComparison.Ordinal));
    }

    /// <summary>A message about a key quotes the handbook.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_key_that_is_missing_is_described_as_in_the_handbook(string handbook, string heading, string file)
    {
        var rows = Rows(handbook, heading);

        foreach (
            var problem in Read(file, "---\nqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqq: 1\n---\n\n# Title\n\nText.\n")
                .Where(problem => problem.Found.Contains("is missing at the top", StringComparison.Ordinal))
        )
        {
            var row = rows.Single(row => problem.Found.StartsWith($"`{row.Key}`", StringComparison.Ordinal));
            Assert.Contains($"`{row.Key}: {row.Example}`", problem.Expected, StringComparison.Ordinal);
            Assert.Contains(row.Means, problem.Expected, StringComparison.Ordinal);
        }
    }

    /// <summary>Asked for a section that nobody knows, a reader lists those that it does.</summary>
    [Theory]
    [InlineData("lessons", "A lesson: lesson.md", "lesson.md")]
    [InlineData("lessons", "A bread: formulas/name.md", "bun.md")]
    [InlineData("lessons", "An exercise: exercises/name.md", "task.md")]
    [InlineData("rubrics", "A rule for grades", "rule.md")]
    public void Every_section_that_a_reader_knows_has_its_row(string handbook, string heading, string file)
    {
        var unknown = Read(file, "---\nperiod: 1 h\n---\n\n# Title\n\nText.\n\n## Qqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqq\n\nText.\n")
            .First(problem => problem.Found.Contains("is not a section that is known here", StringComparison.Ordinal));
        var known = Listed(unknown.Expected);

        Assert.NotEmpty(known);
        Assert.All(known, section => Assert.Contains($"\n| {section} |", SectionOf(handbook, heading), StringComparison.Ordinal));
    }

    /// <summary>Whoever has the download alone finds every name in the handbook, and none that check would refuse.</summary>
    [Fact]
    public void Every_ingredient_stands_in_the_list_of_names()
    {
        var rows = SectionOf("lessons", "Names of ingredients")
            .Split('\n')
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal))
            .Skip(1)
            .Select(line => line.Trim('|', ' ').Split(" | "))
            .SelectMany(row => row[1].Split("; ").Select(name => (Kind: row[0], Name: name)))
            .ToList();

        Assert.Equal(
            IngredientCatalog.All.Select(ingredient => ingredient.Name).Order(StringComparer.Ordinal),
            rows.Select(row => row.Name).Order(StringComparer.Ordinal)
        );
        Assert.All(rows, row =>
            Assert.Equal(
                IngredientCatalog.All.First(ingredient => ingredient.Name == row.Name).Role == IngredientRole.Flour,
                row.Kind == "flour"
            )
        );
    }

    private IReadOnlyList<Diagnostic> Read(string file, string text)
    {
        var path = _folder.Write(file, text);
        return file switch
        {
            "lesson.md" => LessonReader.Read(_folder.Path).Problems,
            "bun.md" => LessonFormulaReader.Read(path).Problems,
            "task.md" => ExerciseReader.Read(path).Problems,
            "marks.md" => MarkingSchemeReader.Read(path).Problems,
            "rule.md" => GradeRuleReader.Read(path).Problems,
            "class.md" => ClassProfileReader.Read(path).Problems,
            "prices.md" => PriceListReader.Read(path).Problems,
            _ => TermReader.Read(path).Problems,
        };
    }

    private static List<string> KnownKeys(IReadOnlyList<Diagnostic> problems) =>
        Listed(problems.First(problem => problem.Found.Contains("is not a key that is known here", StringComparison.Ordinal)).Expected);

    private static List<string> Listed(string advice) =>
        [
            .. advice[(advice.IndexOf(':', StringComparison.Ordinal) + 1)..]
                .TrimEnd('.')
                .Split(',', StringSplitOptions.TrimEntries)
                .Select(word => word.Trim('`', '#', ' ')),
        ];

    private static string SectionOf(string handbook, string heading)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, handbook, "README.md")).ReplaceLineEndings("\n") + "\n## ";
        var start = text.IndexOf($"\n## {heading}\n", StringComparison.Ordinal);
        Assert.True(start >= 0, $"There is no section {heading} in {handbook}/README.md.");
        return text[start..text.IndexOf("\n## ", start + 4, StringComparison.Ordinal)];
    }

    private static List<(string Key, string Means, string Example)> Rows(string handbook, string heading) =>
        [
            .. Row()
                .Matches(SectionOf(handbook, heading))
                .Select(match => (match.Groups["key"].Value, match.Groups["means"].Value, match.Groups["example"].Value)),
        ];

    [GeneratedRegex(@"^\| (?<key>[^|]+) \| (?<means>[^|]+) \| `(?<example>[^`]+)` \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
