using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;
using ClassKit.PracticeBank.Tests.Fillings;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// Answers that need no trial are judged as trials would judge them, over everything that ships: an array formula on the sheet makes the
/// judge try every one.
/// </summary>
public sealed class UntriedAnswersTests(ITestOutputHelper output)
{
    private static readonly int Rounds = Trials.Of(40, 4);

    /// <summary>What a slip may come with: written otherwise, rounded, in another unit, beside the answer of another.</summary>
    private static readonly string[] Dresses =
    [
        "{0}",
        "({0})",
        "{0}",
        "ROUND({0},1)",
        "({0})*1000",
        "({0})/100",
        "({0})*1.8+32",
        "{0}",
        "({0})*1.01",
        "({0})+0.4",
    ];

    [Fact]
    public void What_needs_no_trial_is_judged_as_trials_would_judge_it()
    {
        var draws = SeededDraws.For(22, "untried");
        var (held, wrong) = (0, 0);
        List<string> differing = [];
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var seat in Shipped.Seats)
            {
                var filled = new Dictionary<(string, string), object?>();
                object? Fill(Desk desk, Part part)
                {
                    if (!filled.TryGetValue((desk.Exercise.Id, part.Id), out var known))
                        filled[(desk.Exercise.Id, part.Id)] = known = part.IsNumber ? Written(desk, part, draws) : null;
                    return known;
                }
                var judged = Judged(seat, seat.Return(Fill).Workbook!);
                var tried = Judged(seat, WithArrayFormulas(seat.Return(Fill).Workbook!));
                held += judged.Count;
                wrong += judged.Count(grade => grade.Outcome == Outcome.Incorrect);
                differing.AddRange(
                    judged
                        .Zip(tried)
                        .Select(pair => (Judged: Shown(pair.First), Tried: Shown(pair.Second)))
                        .Where(pair => pair.Judged != pair.Tried)
                        .Select(pair => $"{pair.Judged}\n  tried: {pair.Tried}")
                );
            }
        }

        output.WriteLine($"{held} answers, {wrong} of them wrong, {differing.Count} judged otherwise when tried");
        Assert.True(wrong > held / 10, $"Only {wrong} of {held} answers are wrong.");
        Assert.True(differing.Count == 0, $"{differing.Count} of {held}:\n{string.Join('\n', differing.Take(8))}");
    }

    /// <summary>Two of three are right.</summary>
    private static string Written(Desk desk, Part part, SeededDraws draws)
    {
        if (draws.Below(3) > 0)
            return "=" + desk.Cells(part);
        List<SlipOfThePen> slips = [.. SlipOfThePen.Of(desk.Exercise, part), .. SlipOfThePen.HeldOut(desk.Exercise, part)];
        var slip = slips[draws.Below(slips.Count)].Formula;
        return "="
            + string.Format(
                CultureInfo.InvariantCulture,
                Dresses[draws.Below(Dresses.Length)],
                CellFormulas.Formulas.CellFormula.Parse(slip).Formula is { } formula ? desk.Cells(formula) : desk.Cells(part)
            );
    }

    private static IReadOnlyList<AnswerGrade> Judged(Seat seat, WorkbookSnapshot workbook)
    {
        var judged = seat.Grader.Begin();
        judged.Add(seat.Grader.Judge(new ReturnedFile($"{seat.Student.Who.Id}.xlsx", workbook, null)));
        return seat.Grader.Settle(judged).Students.Single(graded => graded.Who.Id == seat.Student.Who.Id).Answers;
    }

    private static WorkbookSnapshot WithArrayFormulas(WorkbookSnapshot workbook) =>
        workbook with
        {
            Sheets =
            [
                .. workbook.Sheets.Select(sheet =>
                    sheet with
                    {
                        Cells = new Dictionary<(int Row, int Column), CellContent>(sheet.Cells)
                        {
                            [(900, 60)] = new(CellValue.Blank, "1+1", "BH900:BH901"),
                        },
                    }
                ),
            ],
        };

    private static string Shown(AnswerGrade answer) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{answer.Exercise.Id}.{answer.Part.Id} {answer.Outcome} {answer.Points}/{answer.OutOf} {answer.Formula} {answer.Value} {(answer.Value.IsNumber ? BitConverter.DoubleToInt64Bits(answer.Value.Number) : 0)} {answer.Expected:R} {string.Join(',', answer.Findings)} {string.Join(',', answer.OwnEarlierAnswers)}"
        );
}
