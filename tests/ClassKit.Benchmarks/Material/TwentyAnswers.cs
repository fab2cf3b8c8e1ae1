using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Content.Lessons;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Touring;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;

namespace ClassKit.Benchmarks.Material;

/// <summary>One student's returned workbook with twenty answers, each a formula over the sheet's cells, and other inputs for it.</summary>
internal sealed class TwentyAnswers
{
    private const int HowMany = 20;
    private const ulong Seed = 20;

    /// <summary>Deals the demo lesson's first twenty answers to a class of nine, and fills in the first workbook.</summary>
    public TwentyAnswers(int students = 9)
    {
        var demo = DemoMaterial.Find(AppContext.BaseDirectory)
            ?? throw new InvalidOperationException("Run the benchmarks inside the checkout: the demo lesson is their material.");
        var lesson = LessonReader.Read(demo.Lesson).Model
            ?? throw new InvalidOperationException("The demo lesson has errors: run `classkit check lessons`.");
        var roster = new Roster(
            "benchmark",
            [.. Enumerable.Range(1, students).Select(at => new Student($"s{at:D5}", $"Student {at}", $"s{at}@example.org"))]
        );
        Dealt = Dealer.Deal(lesson.Id, lesson.Title, Take(lesson.Exercises), lesson.Marking, roster, Seed).Class!;
        var student = Dealt.Students[0];
        Returned = Fill(student);
        Answers = [.. Dealt.LayOut().AnswersOf(student).Select(answer => answer.Address)];
        FreshInputs =
        [
            .. Dealt
                .Students.Skip(1)
                .Take(8)
                .Select(other =>
                    Dealt.LayOut().GivensOf(other).ToDictionary(given => given.Address, given => CellValue.FromNumber((double)given.Value))
                ),
        ];
    }

    /// <summary>What was dealt.</summary>
    public DealtClass Dealt { get; }

    /// <summary>The first student's workbook as it came back.</summary>
    public byte[] Returned { get; }

    /// <summary>The twenty answer cells.</summary>
    public IReadOnlyList<CellAddress> Answers { get; }

    /// <summary>Eight other sets of inputs.</summary>
    public IReadOnlyList<IReadOnlyDictionary<CellAddress, CellValue>> FreshInputs { get; }

    /// <summary>A student's workbook with every answer a formula, and every formula right.</summary>
    public byte[] Fill(DealtStudent student)
    {
        var layout = Dealt.LayOut();
        return WorkbookFiller.Fill(DealtWorkbookWriter.Write(Dealt, student), Returning.Edits(layout, [.. Answered(student, layout)]));
    }

    private IEnumerable<RehearsedAnswer> Answered(DealtStudent student, PracticeLayout layout) =>
        Dealt.Exercises.SelectMany(exercise =>
        {
            var sheet = new AnswerSheet(layout.Of(exercise.Id), student);
            return exercise.Parts.Select(part => sheet.Answer(part, AnswerWay.Cells)).ToList();
        });

    /// <summary>One answer in so many is wrong, where any are.</summary>
    public const int OneWrongIn = 4;

    /// <summary>The same with a quarter of the answers wrong: near the key, two edits from it, and far from it.</summary>
    /// <param name="student">Whose.</param>
    /// <param name="wrongFrom">The place of the first wrong one.</param>
    public byte[] FillQuarterWrong(DealtStudent student, int wrongFrom)
    {
        string[] slips = ["=({0})/2", "=(({0})/2)/100", "=1/({0})", "=({0})*1.37+0.5"];
        var layout = Dealt.LayOut();
        var answers = Answered(student, layout)
            .Select(
                (answer, at) =>
                    at % OneWrongIn == wrongFrom && answer.Content is string right && right.StartsWith('=')
                        ? answer with
                        {
                            Content = string.Format(
                                System.Globalization.CultureInfo.InvariantCulture,
                                slips[at / OneWrongIn % slips.Length],
                                right[1..]
                            ),
                        }
                        : answer
            );
        return WorkbookFiller.Fill(DealtWorkbookWriter.Write(Dealt, student), Returning.Edits(layout, [.. answers]));
    }

    /// <summary>Whole exercises as long as they fit, the last one cut to fit.</summary>
    private static List<Exercise> Take(IReadOnlyList<Exercise> exercises)
    {
        List<Exercise> taken = [];
        var left = HowMany;
        foreach (var exercise in exercises.TakeWhile(_ => left > 0))
        {
            var parts = exercise.Parts.Take(left).ToList();
            taken.Add(exercise with { Parts = parts });
            left -= parts.Count;
        }
        return left == 0 ? taken : throw new InvalidOperationException($"The demo lesson has fewer than {HowMany} parts.");
    }
}
