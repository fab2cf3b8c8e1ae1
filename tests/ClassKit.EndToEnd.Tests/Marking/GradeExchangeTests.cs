using System.Globalization;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using CsvHelper;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>The demo class's grades in the tables of 1EdTech OneRoster 1.2. Columns and states of the standard from memory.</summary>
public sealed class GradeExchangeTests(TourRun tour) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("out");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_student_has_a_result_that_points_at_the_one_line_item()
    {
        Exchange().Done();

        var item = Assert.Single(Table("lineItems.csv"));
        var results = Table("results.csv");
        Assert.Equal("45", item["resultValueMax"]);
        Assert.Equal(("2026-11-16", "2026-11-20"), (item["assignDate"], item["dueDate"]));
        Assert.Equal(24, results.Select(result => result["sourcedId"]).Distinct().Count());
        Assert.All(results, result => Assert.Equal(item["sourcedId"], result["lineItemSourcedId"]));
        Assert.All(results, result => Assert.Equal("2026-11-23", result["scoreDate"]));
    }

    [Fact]
    public void Scores_are_those_of_the_table_of_grades()
    {
        Exchange().Done();

        var points = Read(Path.Combine(tour.Folder, "graded", "grades.csv"))
            .Where(row => row["status"] == "graded")
            .ToDictionary(row => row["id"], row => row["points"]);
        var scored = Table("results.csv").Where(row => row["scoreStatus"] is "fully graded" or "partially graded").ToList();
        Assert.Equal(points, scored.ToDictionary(row => row["studentSourcedId"], row => row["score"]));
        // Two of the class left the question in own words blank; what all others wrote waits for the instructor, and their scores say so.
        Assert.Equal(
            ["ifeoma-eze", "katarzyna-zielinska"],
            scored.Where(row => row["scoreStatus"] == "fully graded").Select(row => row["studentSourcedId"]).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Nothing_handed_in_and_nothing_readable_are_not_zeros()
    {
        Exchange().Done();

        var results = Table("results.csv").ToDictionary(row => row["studentSourcedId"]);
        Assert.Equal(
            ("not submitted", "", "true"),
            (results["rosa-whitehorse"]["scoreStatus"], results["rosa-whitehorse"]["score"], results["rosa-whitehorse"]["missing"])
        );
        Assert.Equal(
            ("submitted", "", "false"),
            (results["noor-rahman"]["scoreStatus"], results["noor-rahman"]["score"], results["noor-rahman"]["missing"])
        );
    }

    [Fact]
    public void The_manifest_announces_exactly_the_tables_that_are_there()
    {
        Exchange().Done();

        var manifest = Table("manifest.csv").ToDictionary(row => row["propertyName"], row => row["value"]);
        Assert.Equal("1.2", manifest["oneroster.version"]);
        Assert.Equal(
            ["lineItems", "results"],
            manifest
                .Where(entry => entry.Key.StartsWith("file.", StringComparison.Ordinal) && entry.Value == "bulk")
                .Select(entry => entry.Key[5..])
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_day_that_is_none_and_a_due_day_before_the_first_are_refused()
    {
        Assert.Equal(2, Exchange(due: "20 November").ExitCode);
        Assert.Contains("The days are --assigned and --due.", Exchange(due: "2026-11-01").Problems, StringComparison.Ordinal);
    }

    private ClassKitRun Exchange(string due = "2026-11-20") =>
        ClassKitRun.Of(
            "grade-exchange",
            Path.Combine(tour.Folder, "dealt"),
            "--graded",
            Path.Combine(tour.Folder, "graded"),
            "--out",
            Out,
            "--class",
            "class-1",
            "--school",
            "school-1",
            "--session",
            "term-1",
            "--category",
            "homework",
            "--assigned",
            "2026-11-16",
            "--due",
            due,
            "--scored",
            "2026-11-23"
        );

    private List<Dictionary<string, string>> Table(string name) => Read(Path.Combine(Out, name));

    private static List<Dictionary<string, string>> Read(string path)
    {
        using var text = new StreamReader(path);
        using var csv = new CsvReader(text, CultureInfo.InvariantCulture);
        csv.Read();
        csv.ReadHeader();
        var rows = new List<Dictionary<string, string>>();
        while (csv.Read())
            rows.Add(csv.HeaderRecord!.ToDictionary(column => column, column => csv.GetField(column)!));
        return rows;
    }
}
