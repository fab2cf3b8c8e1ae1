using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>
/// Points that an instructor types into the gradebook are never lost, are told with their place, and count when they are taken over.
/// </summary>
public sealed class TypedPointsTests(TourRun tour) : IDisposable
{
    private const string SetAside = "gradebook (changed by you).xlsx";

    private readonly TemporaryFolder _folder = new();

    private string Grades => _folder.Of("grades");

    private string Corrections => Path.Combine(Grades, "corrections.csv");

    private string Gradebook => Path.Combine(Grades, "gradebook.xlsx");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void They_are_shown_kept_and_taken_over_when_told_to_also_from_a_gradebook_set_aside()
    {
        Grade();
        var (student, before) = Type("0");
        var typed = File.ReadAllBytes(Gradebook);

        var shown = Grade();

        Assert.Contains($"gradebook.xlsx, Gradebook!D7: {student}, 1a: ", shown.Output, StringComparison.Ordinal);
        Assert.Contains("--take-over", shown.Output, StringComparison.Ordinal);
        Assert.Contains($"your version is kept as {SetAside}", shown.Output, StringComparison.Ordinal);
        Assert.Equal(typed, File.ReadAllBytes(Path.Combine(Grades, SetAside)));
        Assert.Equal(before, First());
        Assert.False(File.Exists(Corrections));
        Assert.Contains("Gradebook!D7", File.ReadAllText(Path.Combine(Grades, "class-report.html")), StringComparison.Ordinal);

        var compared = Regrade("--take-over");

        Assert.Contains("taken over", compared.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(Corrections));

        const string mine = "student,part,points,reason\n\n";
        File.WriteAllText(Corrections, mine);
        Regrade("--take-over", "--write");

        Assert.StartsWith(mine, File.ReadAllText(Corrections), StringComparison.Ordinal);
        Assert.Equal(3, File.ReadAllLines(Corrections).Length);
        Assert.Equal(0, First());
        Assert.DoesNotContain("gradebook", Grade().Output.Replace("--", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(0, First());
    }

    [Fact]
    public void Against_a_correction_that_stands_the_table_is_named()
    {
        Grade();
        var (student, _) = Type("0");
        Grade("--take-over");
        Type("1");

        var run = Grade("--take-over");

        Assert.Contains($"Gradebook!D7: {student}", run.Output, StringComparison.Ordinal);
        Assert.Contains("corrections.csv has other points for it", run.Output, StringComparison.Ordinal);
        Assert.Equal(0, First());
    }

    [Fact]
    public void Under_pseudonyms_nothing_is_taken_over() =>
        Assert.Equal(2, ClassKitRun.Of("grade", "d", "--returned", "r", "--out", "o", "--pseudonymous", "--take-over").ExitCode);

    /// <summary>Types points for the first answer of the first student.</summary>
    private (string Student, double Before) Type(string points)
    {
        var (saved, printed) = OpenPyXl.Run(
            File.ReadAllBytes(Gradebook),
            $"print(w['Gradebook']['A7'].value)\nw['Gradebook']['D7'] = {points}"
        );
        File.WriteAllBytes(Gradebook, saved);
        return (printed.Trim(), First());
    }

    private double First() =>
        JsonDocument
            .Parse(File.ReadAllText(Path.Combine(Grades, "grades.json")))
            .RootElement.GetProperty("students")[0]
            .GetProperty("answers")[0]
            .GetProperty("points")
            .GetDouble();

    private ClassKitRun Grade(params string[] options) =>
        ClassKitRun
            .Of(["grade", Path.Combine(tour.Folder, "dealt"), "--returned", Checkout.Demo.Returned, "--out", Grades, .. options])
            .Done();

    private ClassKitRun Regrade(params string[] options) =>
        ClassKitRun
            .Of(["regrade", Path.Combine(tour.Folder, "dealt"), "--returned", Checkout.Demo.Returned, "--graded", Grades, .. options])
            .Done();
}
