using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>
/// Grading the demo class again under other rules: nothing is written until it is asked for, and then it is what was announced.
/// </summary>
public sealed class RegradeTests(TourRun tour) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Grades => _folder.Of("grades");

    private string Dealt => Path.Combine(tour.Folder, "dealt");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_changed_marking_scheme_is_compared_first_and_written_when_asked()
    {
        Grade();
        var marks = _folder.Of("marks.md");
        File.WriteAllText(
            marks,
            File.ReadAllText(Path.Combine(Checkout.Demo.Root, "rubrics", "calculation-marks.md"))
                .Replace("accuracy: 40 %", "accuracy: 50 %", StringComparison.Ordinal)
        );
        var before = FolderContent.Digests(Grades);
        var typed = Answers().Count(answer => answer.Outcome == "value-only" && answer.Points > 0);

        var compared = Regrade("--marking", marks);

        Assert.Contains("Number only earns 50 %, and earned 40 %", compared.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing was written", compared.Output, StringComparison.Ordinal);
        Assert.Equal(before, FolderContent.Digests(Grades));

        Regrade("--marking", marks, "--write");

        // Every typed right number where a formula was asked now has half its points; the demo class gives nothing else to change.
        Assert.True(typed > 0);
        Assert.All(Answers().Where(answer => answer.Outcome == "value-only"), answer => Assert.Equal(answer.OutOf / 2, answer.Points, 2));
        Assert.Contains("Nobody's points", Regrade("--marking", marks).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_for_totals_is_said_wherever_the_total_stands()
    {
        Grade();
        var marks = _folder.Of("marks.md");
        File.WriteAllText(
            marks,
            File.ReadAllText(Path.Combine(Checkout.Demo.Root, "rubrics", "calculation-marks.md"))
                .Replace("accuracy: 40 %", "accuracy: 40 %\nbest exercises: 4", StringComparison.Ordinal)
        );

        Assert.Contains("Only the 4 best exercises count now", Regrade("--marking", marks, "--write").Output, StringComparison.Ordinal);

        var graded = Record()
            .GetProperty("students")
            .EnumerateArray()
            .Where(student => student.GetProperty("status").GetString() == "graded")
            .ToList();
        Assert.All(graded, student =>
        {
            var uncounted = student.GetProperty("uncounted").EnumerateArray().Select(exercise => exercise.GetString()!).ToList();
            Assert.Equal(4, uncounted.Count);
            var counted = student
                .GetProperty("answers")
                .EnumerateArray()
                .Where(answer => !uncounted.Contains(answer.GetProperty("exercise").GetString()!));
            Assert.Equal(counted.Sum(answer => answer.GetProperty("points").GetDouble()), student.GetProperty("points").GetDouble(), 2);
            Assert.Contains(
                "Not counted of yours:",
                File.ReadAllText(Path.Combine(Grades, "feedback", $"{student.GetProperty("id").GetString()}.html")),
                StringComparison.Ordinal
            );
        });
        Assert.Contains(
            "Only the 4 best exercises count.",
            File.ReadAllText(Path.Combine(Grades, "class-report.html")),
            StringComparison.Ordinal
        );
        Assert.Contains("Nobody's points", Regrade("--marking", marks).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_corrected_key_is_taken_from_the_lesson()
    {
        Grade();
        var lesson = Checkout.CopyLesson(_folder);
        var exercise = Path.Combine(lesson, "exercises", "dough_temperature.md");
        File.WriteAllText(exercise, File.ReadAllText(exercise).Replace("Points: 2", "Points: 3", StringComparison.Ordinal));

        var compared = Regrade("--keys", lesson);

        Assert.Contains("students change", compared.Output, StringComparison.Ordinal);
        Assert.Contains("dough_temperature.", compared.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("hydration.", compared.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Corrections_in_the_folder_of_grades_outlive_every_grading()
    {
        Grade();
        var table = Path.Combine(Grades, "corrections.csv");
        const string text = "student,part,points,reason\nrosa-whitehorse,hydration.milk,1,\"Handed in on paper, and right.\"\n";
        File.WriteAllText(table, text);

        Grade();
        Grade();

        Assert.Equal(text, File.ReadAllText(table));
        Assert.Equal(1, Points("rosa-whitehorse"));
        Assert.Contains(
            "Handed in on paper, and right.",
            File.ReadAllText(Path.Combine(Grades, "feedback", "rosa-whitehorse.html")),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Handed in on paper, and right.",
            File.ReadAllText(Path.Combine(Grades, "class-report.html")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_correction_that_fits_nothing_leaves_the_old_grades_as_they_are()
    {
        Grade();
        var before = FolderContent.Digests(Grades);
        var table = _folder.Of("corrections.csv");
        File.WriteAllText(table, "student,part,points,reason\nrosa-whitehorse,hydration.milk,9,x\n");

        var run = ClassKitRun.Of("grade", Dealt, "--returned", Checkout.Demo.Returned, "--out", Grades, "--corrections", table);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("corrections.csv:2: The points are `9`", run.Problems, StringComparison.Ordinal);
        Assert.Equal(before, FolderContent.Digests(Grades));
    }

    [Fact]
    public void Without_an_earlier_grading_there_is_nothing_to_compare_with()
    {
        var run = ClassKitRun.Of("regrade", Dealt, "--returned", Checkout.Demo.Returned, "--graded", Grades);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("grades.json", run.Problems, StringComparison.Ordinal);
    }

    private void Grade() => ClassKitRun.Of("grade", Dealt, "--returned", Checkout.Demo.Returned, "--out", Grades).Done();

    private ClassKitRun Regrade(params string[] options) =>
        ClassKitRun.Of(["regrade", Dealt, "--returned", Checkout.Demo.Returned, "--graded", Grades, .. options]).Done();

    private JsonElement Record() => JsonDocument.Parse(File.ReadAllText(Path.Combine(Grades, "grades.json"))).RootElement.Clone();

    private double Points(string student) =>
        Record()
            .GetProperty("students")
            .EnumerateArray()
            .Single(entry => entry.GetProperty("id").GetString() == student)
            .GetProperty("points")
            .GetDouble();

    private List<(string Outcome, double Points, double OutOf)> Answers() =>
        [
            .. Record()
                .GetProperty("students")
                .EnumerateArray()
                .SelectMany(student => student.GetProperty("answers").EnumerateArray())
                .Where(answer => answer.GetProperty("exercise").GetString() != "three_trays") // is answered by choosing and in words
                .Select(answer =>
                    (
                        answer.GetProperty("outcome").GetString()!,
                        answer.GetProperty("points").GetDouble(),
                        answer.GetProperty("outOf").GetDouble()
                    )
                ),
        ];
}
