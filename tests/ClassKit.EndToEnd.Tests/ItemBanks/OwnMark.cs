using System.Globalization;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Lettering;
using ClassKit.Exercises.Variants;
using ClassKit.Grading;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;

namespace ClassKit.EndToEnd.Tests.ItemBanks;

/// <summary>One item with the numbers that its student reads, put before our own grader as answers written on paper.</summary>
internal sealed class OwnMark
{
    private readonly Exercise _exercise;
    private readonly Variant _variant;
    private readonly DealtStudent _student;
    private readonly ClassGrader _grader;

    /// <param name="exercise">The exercise.</param>
    /// <param name="shown">The numbers in the item's table, with their units after a no-break space.</param>
    public OwnMark(Exercise exercise, IReadOnlyList<string> shown)
    {
        _exercise = exercise;
        var givens = exercise
            .Givens.Zip(shown)
            .ToDictionary(
                pair => pair.First.Id,
                pair => decimal.Parse(pair.Second.Split('\u00A0')[0], CultureInfo.InvariantCulture) / (pair.First.Unit == "%" ? 100 : 1)
            );
        var answers = new Dictionary<string, double>();
        foreach (var part in exercise.Parts)
            answers[part.Id] = KeyValues.Number(part.Key, KeyValues.Names(givens, answers))!.Value;
        _variant = new(exercise, givens, answers);
        _student = new(new("ada", "Ada Berg"), "workbooks/ada.xlsx", [_variant]);
        _grader = new(new("items", "Items", "", 1, new("m", "M", 1, 1, 0, 0.6m), [exercise], [_student]));
    }

    public double Right(Part part) => _variant.Answers[part.Id];

    /// <summary>What a known wrong method comes to on right earlier answers; null if it comes to nothing.</summary>
    public double? Wrong(Misconception misconception) =>
        KeyValues.Number(misconception.Formula, KeyValues.Names(_variant.Givens, _variant.Answers));

    /// <summary>What a student types or clicks for a value.</summary>
    public static string Entered(Part part, double value) =>
        part.Choice is { From: var list }
            ? list.Find(value)!.Words
            : (value * (part.Unit == "%" ? 100 : 1)).ToString("R", CultureInfo.InvariantCulture);

    /// <summary>The points of the parts that our grader calls right, and what it says of those with a known wrong turn.</summary>
    public (double Score, IReadOnlyList<string> Said) Of(IReadOnlyDictionary<Part, double> answers)
    {
        var work = new PaperWork(
            _student,
            "paper row 1",
            [.. answers.Select(answer => new PaperAnswer(_exercise.Id, answer.Key.Id, Written(answer.Key, answer.Value), false))]
        );
        var judged = _grader.Begin();
        judged.Add(_grader.Judge(work));
        var grades = _grader.Settle(judged).Students[0].Answers;
        return (
            (double)grades.Where(grade => grade.Outcome is Outcome.Sound or Outcome.ValueOnly).Sum(grade => grade.Part.Points),
            [
                .. grades
                    .Select(grade =>
                        grade.Outcome is Outcome.Sound or Outcome.ValueOnly ? "Right: " + grade.Part.Ask : grade.Misconception?.Words
                    )
                    .OfType<string>(),
            ]
        );
    }

    private CellValue Written(Part part, double value) =>
        part.Choice is { From: var list }
            ? CellValue.FromText(LetteredOptions.Of(_exercise, list, _variant.Givens).LetterOf(value))
            : CellValue.FromNumber(value);
}
