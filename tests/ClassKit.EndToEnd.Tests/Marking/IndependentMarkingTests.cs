using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Marking;

/// <summary>Workbooks that a Python script fills with openpyxl and marks with its own arithmetic, knowing dealt.json alone.</summary>
public sealed class IndependentMarkingTests
{
    /// <summary>Other seeds deal other numbers to the same exercises.</summary>
    public static TheoryData<int> Seeds => Trials.All ? [11, 12, 13] : [11];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Our_outcomes_are_those_of_the_script(int seed)
    {
        Tool.PythonWithOpenPyXl.Require();
        using var folder = new TemporaryFolder();
        var number = seed.ToString(System.Globalization.CultureInfo.InvariantCulture);
        ClassKitRun
            .Of("deal", Checkout.Demo.Lesson, "--roster", Checkout.Demo.Roster, "--out", folder.Of("dealt"), "--seed", number)
            .Done();
        Tool.PythonWithOpenPyXl.Run(
            Path.Combine(AppContext.BaseDirectory, "Independent", "fill_and_mark.py"),
            folder.Of("dealt"),
            folder.Of("returned"),
            folder.Of("expected.json"),
            number
        );
        ClassKitRun.Of("grade", folder.Of("dealt"), "--returned", folder.Of("returned"), "--out", folder.Of("graded")).Done();

        var expected = Outcomes(folder.Of("expected.json"));
        Assert.True(expected.Count > 24 * 20, "The script must have answered the whole class.");
        Assert.Equal(expected, Outcomes(folder.Of("graded", "grades.json")));
    }

    private static List<string> Outcomes(string file)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(file));
        return
        [
            .. json
                .RootElement.GetProperty("students")
                .EnumerateArray()
                .SelectMany(student =>
                    student
                        .GetProperty("answers")
                        .EnumerateArray()
                        .Select(answer =>
                            $"{student.GetProperty("id")} {answer.GetProperty("exercise")}.{answer.GetProperty("part")}: {answer.GetProperty("outcome")} {answer.GetProperty("misconception")}"
                        )
                ),
        ];
    }
}
