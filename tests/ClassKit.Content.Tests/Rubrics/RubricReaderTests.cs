using ClassKit.Content.Rubrics;
using ClassKit.Exercises.Marking;

namespace ClassKit.Content.Tests.Rubrics;

public sealed class RubricReaderTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private static string Shipped(string name) => File.ReadAllText(Path.Combine(Repository.Rubrics, name)).ReplaceLineEndings("\n");

    [Fact]
    public void A_marking_scheme_is_read_as_shares()
    {
        var scheme = MarkingSchemeReader.Read(_folder.Write("marks.md", Shipped("calculation-marks.md"))).Model;

        Assert.Equal(new("marks", "Marks for calculations", 0.4m, 1, 0, 0.6m) { UnitSlipShare = 0, RoundingSlipShare = 0.6m }, scheme);
    }

    [Theory]
    [InlineData("", null, null)]
    [InlineData("late a day: 10 %\n", 0.1, 1.0)]
    [InlineData("late a day: 10 %\nlate at most: 50 %\n", 0.1, 0.5)]
    public void A_marking_scheme_says_what_late_work_costs(string lines, double? aDay, double? atMost)
    {
        var file = _folder.Write(
            "marks.md",
            Shipped("calculation-marks.md").Replace("several versions: best\n", lines, StringComparison.Ordinal)
        );

        var late = MarkingSchemeReader.Read(file).Model!.Late;

        Assert.Equal(((decimal?)aDay, (decimal?)atMost), (late?.ADay, late?.AtMost));
    }

    [Theory]
    [InlineData("", null, null)]
    [InlineData("best exercises: 5\n", 5, null)]
    [InlineData("best exercises: 5\npoints at most: 40\n", 5, 40)]
    public void A_marking_scheme_says_what_makes_a_total(string lines, int? best, int? most)
    {
        var file = _folder.Write(
            "marks.md",
            Shipped("calculation-marks.md").Replace("several versions: best\n", lines, StringComparison.Ordinal)
        );

        Assert.Equal(new TotalRule(best, most), MarkingSchemeReader.Read(file).Model!.Total);
    }

    [Fact]
    public void The_two_halves_of_a_parts_points_add_up()
    {
        var file = _folder.Write(
            "marks.md",
            Shipped("calculation-marks.md").Replace("accuracy: 40 %", "accuracy: 40 %\nmethod: 60 %", StringComparison.Ordinal)
        );

        Assert.True(MarkingSchemeReader.Read(file).Succeeded);
    }

    [Theory]
    [InlineData("several versions: newest\n", VersionChoice.Newest)]
    [InlineData("several versions: best\n", VersionChoice.Best)]
    [InlineData("", VersionChoice.Best)]
    public void A_marking_scheme_says_which_of_several_versions_counts(string line, VersionChoice choice)
    {
        var file = _folder.Write(
            "marks.md",
            Shipped("calculation-marks.md").Replace("several versions: best\n", line, StringComparison.Ordinal)
        );

        Assert.Equal(choice, MarkingSchemeReader.Read(file).Model!.Versions);
    }

    [Theory]
    [InlineData("accuracy: 40 %", "accuracy: 40 %\nmethod: 50 %", "method", "come to 90 %", "add up to 100 %")]
    [InlineData("misconception: 0 %", "misconception: 50 %", "", "earn more than a right number", "no more than `accuracy`")]
    [InlineData(
        "accuracy: 40 %",
        "accuracy: 40 %\nlate at most: 50 %",
        "late at most",
        "limits a deduction that is not there",
        "`late a day: 10 %`"
    )]
    [InlineData("accuracy: 40 %", "accuracy: 40 %\nlate a day: 110 %", "late a day", "`late a day` is 110 %", "from 0 to 100")]
    [InlineData("accuracy: 40 %", "accuracy: 40 %\nbest exercises: 0", "best exercises", "`best exercises` is 0", "from 1 to 10000")]
    [InlineData("accuracy: 40 %", "accuracy: 40 %\npoints at most: many", "points at most", "`points at most` is `many`", "Write digits")]
    [InlineData("several versions: best", "several versions: latest", "", "`several versions` is `latest`", "best")]
    [InlineData("accuracy: 40 %", "accuracy: 0.4", "", "`0.4`, without a unit", "`40 %`")]
    [InlineData("accuracy: 40 %", "accuracy: 140 %", "", "`accuracy` is 140 %", "from 0 to 100")]
    [InlineData("misconception: 0 %", "misconceptions: 0 %", "", "`misconceptions` is not a key", "Did you mean `misconception`?")]
    [InlineData("follow-through: 100 %\n", "", "---", "`follow-through` is missing", "`follow-through: 100 %`")]
    public void A_mistake_in_a_marking_scheme_is_named(
        string find,
        string replacement,
        string? at,
        string found,
        string remedy,
        int problems = 1
    )
    {
        var sound = Shipped("calculation-marks.md");
        var broken = Complaint.Break(sound, find, replacement);

        Complaint.Among(
            MarkingSchemeReader.Read(_folder.Write("marks.md", broken)),
            problems,
            Complaint.LineFor(at, sound, find, broken),
            found,
            remedy
        );
    }

    [Fact]
    public void A_practical_rubric_has_its_levels_as_columns()
    {
        var rubric = PracticalRubricReader.Read(_folder.Write("bench.md", Shipped("bench-work.md"))).Model;

        Assert.NotNull(rubric);
        Assert.Equal([new("Not yet", 0), new("Developing", 1), new("Secure", 2), new("Excellent", 3)], rubric.Levels);
        Assert.All(rubric.Criteria, criterion => Assert.Equal(rubric.Levels.Count, criterion.Descriptors.Count));
        Assert.Equal("Filled by eye", rubric.Criteria.Single(criterion => criterion.Name == "Filling").Descriptors[0]);
        Assert.Equal(3 * rubric.Criteria.Sum(criterion => criterion.Weight), rubric.OutOf);
        Assert.StartsWith("Watch each team", rubric.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("| Secure (2) |", "| Secure |", "## Criteria", "The column `Secure` is no level", "`Not yet (0)`")]
    [InlineData(
        "| Secure (2) |",
        "| Secure (1) |",
        "## Criteria",
        "`Secure (1)` earns no more than the level before it",
        "from the lowest to the highest"
    )]
    [InlineData("| Filling | 1 |", "| Filling | 0 |", "", "The weight is 0", "above 0")]
    [InlineData("| Filled by eye |", "| |", "", "The cell in the column `Not yet (0)` is empty", "Fill it in")]
    [InlineData("## Criteria", "## Criterions", "", "`## Criterions` is not a section", "Did you mean `Criteria`?")]
    public void A_mistake_in_a_practical_rubric_is_named(
        string find,
        string replacement,
        string? at,
        string found,
        string remedy,
        int problems = 1
    )
    {
        var sound = Shipped("bench-work.md");
        var broken = Complaint.Break(sound, find, replacement);

        Complaint.Among(
            PracticalRubricReader.Read(_folder.Write("bench.md", broken)),
            problems,
            Complaint.LineFor(at, sound, find, broken),
            found,
            remedy
        );
    }
}
