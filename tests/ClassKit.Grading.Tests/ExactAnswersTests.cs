using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests;

/// <summary>
/// Answers that need no trial are judged as trials would judge them: an array formula on the sheet makes the judge try every one.
/// </summary>
public sealed class ExactAnswersTests
{
    /// <summary>
    /// {0} is the key over cells: itself, the same in other words, the same but for the last bits, and what only looks like it.
    /// </summary>
    private static readonly string[] Ways =
    [
        "={0}",
        "=+({0})",
        "=({0})*1",
        "=({0})%*100",
        "=-(-({0}))",
        "=({0})/3*3",
        "=({0})*0.1*10",
        "={0}+0*want",
        "=0*want+({0})",
        "=ROUND({0},6)",
        "=ROUND({0},0)",
        "=({0})+0.4",
        "=({0})*2",
        "=want",
        "=want*1",
        "=friction/2",
        "=SUM({0})",
    ];

    private static readonly Dictionary<string, Func<Part, object?>> Before = new()
    {
        ["right"] = part => part.Key.Text,
        ["right but for noise"] = part => $"=({part.Key.Text[1..]})/3*3",
        ["wrong"] = part => $"=({part.Key.Text[1..]})*1.21+want",
        ["typed wrong"] = _ => 148,
        ["a number that is always the same"] = _ => "=0*want+12",
        ["nothing"] = _ => null,
    };

    public static TheoryData<string> Earlier => [.. Before.Keys];

    [Theory]
    [MemberData(nameof(Earlier))]
    public void What_needs_no_trial_is_judged_as_trials_would_judge_it(string before)
    {
        foreach (var part in DoughTemperatureExercise.Exercise.Parts)
        {
            foreach (var way in Ways)
            {
                var (judged, tried) = (Judged(Filled()), Judged(Filled().WithArrayFormula()));

                Assert.Equal(tried.Select(Shown), judged.Select(Shown));

                ReturnedBook Filled()
                {
                    var book = new ReturnedBook(Ada);
                    foreach (var other in DoughTemperatureExercise.Exercise.Parts)
                    {
                        if (other == part)
                            book.Answer(part.Id, string.Format(CultureInfo.InvariantCulture, way, part.Key.Text[1..]));
                        else if (Before[before](other) is { } content)
                            book.Answer(other.Id, content);
                    }
                    return book;
                }
            }
        }
    }

    private static IReadOnlyList<AnswerGrade> Judged(ReturnedBook book) => new ClassGrader(Class).Judge(book.As("ada.xlsx")).Grade!.Answers;

    private static string Shown(AnswerGrade answer) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{answer.Part.Id} {answer.Outcome} {answer.Points}/{answer.OutOf} {answer.Formula} {answer.Value.Kind} {answer.Value} {(answer.Value.IsNumber ? BitConverter.DoubleToInt64Bits(answer.Value.Number) : 0)} {answer.Expected:R} {string.Join(',', answer.Findings)} {string.Join(',', answer.OwnEarlierAnswers)}"
        );
}
