using System.Text;
using System.Text.Json;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Grading.Statistics;
using ClassKit.Grading.Summaries;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>
/// Classes of which statistics say nothing are graded like any other: every output is written, and no number in it is none.
/// </summary>
public sealed class DegenerateClassTests
{
    private static readonly IReadOnlyList<Exercise> Exercises = SmallClass.Dealt.Exercises;

    private static readonly IReadOnlyList<Part> Parts = [.. Exercises.SelectMany(exercise => exercise.Parts)];

    /// <summary>Points that each student has on each part; none for a student of whom nothing came back.</summary>
    public static TheoryData<string, decimal[][]> Classes { get; } =
        new()
        {
            { "twelve students with equal totals", [.. Enumerable.Range(0, 12).Select(student => Sharing(student, 2))] },
            {
                "twelve students with equal totals of a tenth",
                [.. Enumerable.Range(0, 12).Select(student => Sharing(student, Parts.Count))]
            },
            { "all zero", [.. Enumerable.Repeat(All(0), 12)] },
            { "all full", [.. Enumerable.Repeat(All(1), 12)] },
            { "all alike", [.. Enumerable.Repeat(All(0.33m), 12)] },
            { "one student", [All(0.6m)] },
            { "one student of many", [All(0.6m), [], [], []] },
            { "two students who are alike", [All(0.6m), All(0.6m)] },
            { "two students who hardly differ", [All(0.6m), [0.61m * Parts[0].Points, .. All(0.6m)[1..]]] },
            {
                "nobody handed in",
                [
                    [],
                    [],
                    [],
                ]
            },
            { "nobody at all", [] },
        };

    private static decimal[] All(decimal share) => [.. Parts.Select(part => share * part.Points)];

    /// <summary>
    /// The same points for all, on other parts for each student, so that doubles added in their order come to other totals.
    /// </summary>
    private static decimal[] Sharing(int student, int among) =>
        [.. Parts.Select((_, part) => (part + student) % Parts.Count).Select(place => place < among ? 0.1m * (1 + (place % 3)) : 0)];

    [Theory]
    [MemberData(nameof(Classes))]
    public void Every_output_is_written_and_every_number_in_it_is_one(string name, decimal[][] points)
    {
        Assert.NotEmpty(name);
        foreach (var file in GradeFiles.Of(GradeCommands.ResultOf(Grades(points))))
        {
            if (file.Path.EndsWith(".xlsx", StringComparison.Ordinal))
                HoldsNumbers(file.Content);
            else
                HoldsNumbers(file.Path, Encoding.UTF8.GetString(file.Content));
        }
    }

    /// <summary>Reasons, not only absence: which one is known from how the class was made.</summary>
    [Theory]
    [InlineData("twelve students with equal totals", NoReliability.NobodyDiffers, "All totals are equal")]
    [InlineData("twelve students with equal totals of a tenth", NoReliability.NobodyDiffers, "All totals are equal")]
    [InlineData("all zero", NoReliability.NobodyDiffers, "All totals are equal")]
    [InlineData("all full", NoReliability.NobodyDiffers, "All totals are equal")]
    [InlineData("one student of many", NoReliability.TooFewStudents, "takes two graded workbooks")]
    [InlineData("two students who hardly differ", null, "Reliability (Cronbach’s alpha) is")]
    public void What_cannot_be_told_is_said_with_the_reason(string name, NoReliability? why, string words)
    {
        var grades = Grades(Classes.Single(row => row.Data.Item1 == name).Data.Item2);
        Assert.Equal(why, ClassSummarizer.Summarize(grades).Statistics.WhyNone);
        var report = GradeFiles.Of(GradeCommands.ResultOf(grades)).Single(file => file.Path == "class-report.html").Content;
        Assert.Contains(words, Encoding.UTF8.GetString(report), StringComparison.Ordinal);
    }

    /// <summary>Points are added as they are written: 0.1 + 0.1 + 0.1 is 0.3, and grades.json says 0.3.</summary>
    [Fact]
    public void Totals_are_exact_and_written_plainly()
    {
        var grades = Grades([
            [.. Parts.Select((_, part) => part < 3 ? 0.1m : 0)],
        ]);
        Assert.Equal(0.3m, grades.Students[0].Points);
        var written = JsonDocument
            .Parse(GradesJson.Write(grades))
            .RootElement.GetProperty("students")[0]
            .GetProperty("points")
            .GetRawText();
        Assert.Equal("0.3", written);
    }

    private static void HoldsNumbers(string path, string text)
    {
        foreach (var none in (string[])["NaN", "Infinity", "∞", "E+", "e+", ".0000000"])
            Assert.DoesNotContain(none, WithoutStyle(text), StringComparison.Ordinal);
        if (path.EndsWith(".json", StringComparison.Ordinal))
            Assert.NotNull(JsonDocument.Parse(text));
    }

    private static string WithoutStyle(string page) =>
        page.IndexOf("</style>", StringComparison.Ordinal) is var end and >= 0 ? page[end..] : page;

    private static void HoldsNumbers(byte[] workbook)
    {
        foreach (var (_, content) in ReturnedWorkbookReader.Read(workbook).Workbook!.Sheets.SelectMany(sheet => sheet.Cells))
        {
            Assert.False(content.Stored.IsError, $"{content.Formula} comes to {content.Stored}");
            if (content.Stored.IsNumber)
                Assert.True(double.IsFinite(content.Stored.Number));
        }
    }

    private static ClassGrades Grades(decimal[][] points)
    {
        var one = SmallClass.Dealt.Students[0];
        List<DealtStudent> students = [.. points.Select((_, at) => one with { Who = new($"s-{at}", $"Student {at}") })];
        var dealt = SmallClass.Dealt with { Students = students };
        return new(dealt, [.. students.Select((student, at) => Grade(student, points[at]))], []);
    }

    private static StudentGrade Grade(DealtStudent student, decimal[] points) =>
        points.Length == 0
            ? new(student.Who, GradeStatus.Missing, null, [], [])
            : new(
                student.Who,
                GradeStatus.Graded,
                $"{student.Who.Id}.xlsx",
                [.. Exercises.SelectMany(exercise => exercise.Parts.Select(part => (exercise, part))).Zip(points, Answer)],
                []
            );

    private static AnswerGrade Answer((Exercise Exercise, Part Part) asked, decimal points) =>
        new(
            asked.Exercise,
            asked.Part,
            points == 0 ? Outcome.Blank : Outcome.Sound,
            points,
            asked.Part.Points,
            CellValue.FromNumber(1),
            1,
            "=1",
            [],
            new Dictionary<string, double>()
        );
}
