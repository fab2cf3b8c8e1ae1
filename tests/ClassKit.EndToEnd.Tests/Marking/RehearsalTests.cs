using System.Globalization;
using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>An invented class whose answers are made to be something, so that the grader can be wrong about them.</summary>
public sealed class RehearsalTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_grader_judges_every_answer_as_it_was_made(int seed)
    {
        using var folder = new TemporaryFolder();
        var run = ClassKitRun.Of(
            "rehearse", Checkout.Demo.Lesson, "--students", "40", "--out", folder.Of("out"), "--seed", seed.ToString(CultureInfo.InvariantCulture)).Done();

        using var grades = JsonDocument.Parse(File.ReadAllText(folder.Of("out", "graded", "grades.json")));
        var answers = grades.RootElement.GetProperty("students").EnumerateArray().SelectMany(student => student.GetProperty("answers").EnumerateArray()).ToList();
        Assert.Equal(40 * 27, answers.Count);
        Assert.Contains("No right answer was taken for one.", File.ReadAllText(folder.Of("out", "rehearsal.html")), StringComparison.Ordinal);
        Assert.Contains($"{answers.Count} answers: the grader judged {answers.Count} of them as they were made", run.Output, StringComparison.Ordinal);
        // A rehearsal in which nothing goes wrong would prove nothing.
        foreach (var outcome in (string[])["sound", "value-only", "follow-through", "misconception", "incorrect", "blank", "unreadable"])
            Assert.Contains(answers, answer => answer.GetProperty("outcome").GetString() == outcome);
    }
}
