using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Content.Exercises;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Pages;
using ClassKit.UseCases.Touring;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>
/// No formula that stands as an example in what students get may answer, or nearly answer, anything in it. Every example is put to work on
/// every sheet, at its own cells and at every choice of the sheet's given cells, and its shape is looked for in every key.
/// </summary>
public sealed partial class ExamplesGiveNothingAwayTests
{
    private const double Nearly = 1e-3;

    /// <summary>Everything that ships: the lessons' own exercises and the bank.</summary>
    public static TheoryData<string, ulong> Deals
    {
        get
        {
            var data = new TheoryData<string, ulong>();
            foreach (var folder in Exercises.Keys)
            {
                foreach (var seed in (ulong[])[1, 2026])
                    data.Add(folder, seed);
            }
            return data;
        }
    }

    private static Dictionary<string, IReadOnlyList<Exercise>> Exercises { get; } = Read();

    private static Dictionary<string, IReadOnlyList<Exercise>> Read()
    {
        var root = DemoMaterial.Find(AppContext.BaseDirectory)!.Root;
        return Directory
            .EnumerateFiles(Path.Combine(root, "lessons"), "*.md", SearchOption.AllDirectories)
            .Where(file => Path.GetFileName(file) != "README.md" && File.ReadAllText(file).Contains("## Part:", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .GroupBy(file => Path.GetRelativePath(root, Path.GetDirectoryName(file)!))
            .ToDictionary(
                folder => folder.Key,
                folder => (IReadOnlyList<Exercise>)[.. folder.Select(file => ExerciseReader.Read(file).Model!)]
            );
    }

    private static DealtClass Deal(string folder, ulong seed) =>
        Dealer
            .Deal(
                "deal",
                "A deal",
                Exercises[folder],
                new("test", "Test", 0.4m, 1, 0, 0.6m),
                new("", [new("ada", "Ada Berg"), new("ben", "Ben Okoye"), new("cleo", "Cleo Marín")]),
                seed
            )
            .Class!;

    [Fact]
    public void Every_exercise_that_ships_is_looked_at() => Assert.InRange(Exercises.Values.Sum(exercises => exercises.Count), 40, 1000);

    [Theory]
    [MemberData(nameof(Deals))]
    public void No_example_in_a_workbook_on_a_sheet_or_on_a_practice_page_answers_anything_in_it(string folder, ulong seed)
    {
        var dealt = Deal(folder, seed);
        var workbooks = dealt.Students.ToDictionary(
            student => student,
            student => ReturnedWorkbookReader.Read(DealtWorkbookWriter.Write(dealt, student)).Workbook!
        );
        var examples = dealt
            .Students.SelectMany(student =>
                workbooks[student]
                    .Sheets.SelectMany(sheet => sheet.Cells.Values)
                    .Select(content => content.Stored.ToString())
                    .Append(HtmlPages.Sheet(dealt, student))
                    .Append(HtmlPages.SelfCheck(dealt, student))
            )
            .SelectMany(Examples)
            .Distinct()
            .ToList();
        Assert.NotEmpty(examples);
        foreach (var exercise in dealt.LayOut().Exercises)
        {
            foreach (var example in examples)
                AssertAnswersNothing(example, exercise, workbooks);
        }
    }

    private static IEnumerable<string> Examples(string text) =>
        Example()
            .Matches(text)
            .Select(match =>
                Enumerable
                    .Range(0, match.Length - 1)
                    .Select(less => match.Value[..^less])
                    .FirstOrDefault(formula => Cell().IsMatch(formula) && CellFormula.Parse(formula).Formula is not null)
            )
            .OfType<string>()
            .Select(formula => formula.Trim());

    private static void AssertAnswersNothing(string example, ExerciseLayout layout, Dictionary<DealtStudent, WorkbookSnapshot> workbooks)
    {
        var exercise = layout.Exercise;
        foreach (var part in exercise.Parts)
            Assert.DoesNotContain(Shape(example)[1..], Shape(part.Key.ReplaceNames(_ => "C9").ToString()), StringComparison.Ordinal);
        var cells = Cell().Matches(example).Select(match => match.Value).Distinct().ToList();
        var givens = layout.Givens.Select(place => place.Address.Cell).ToList();
        foreach (var places in Choices(givens, cells.Count).Append(cells))
        {
            var formula = Cell().Replace(example, cell => places[cells.IndexOf(cell.Value)]);
            // One number may be met by chance; what is met for everybody is an answer. Words are none.
            var met = exercise.Parts.Where(part =>
                part.InWords is null
                && workbooks.All(workbook =>
                    Meets(part, workbook.Key.AnswersOf(exercise.Id)[part.Id], Value(formula, layout, workbook.Value))
                )
            );
            Assert.True(
                !met.Any(),
                $"{example}, typed as {formula}, answers {exercise.Id}.{string.Join(", ", met.Select(part => part.Id))}"
            );
        }
    }

    private static bool Meets(Part part, double expected, CellValue value) =>
        value.IsNumber
        && (part.Tolerance.Accepts(expected, value.Number) || (value.Number != 0 && Math.Abs(value.Number / expected - 1) < Nearly));

    private static CellValue Value(string formula, ExerciseLayout layout, WorkbookSnapshot workbook)
    {
        var place = layout.Answers[0].Address with { Row = 900 };
        var sheet = workbook.FindSheet(place.Sheet)!;
        var filled = sheet with
        {
            Cells = new Dictionary<(int Row, int Column), CellContent>(sheet.Cells)
            {
                [(place.Row, place.Column)] = new(CellValue.Blank, formula[1..]),
            },
        };
        return new WorkbookEvaluator(workbook with { Sheets = [filled] }).Evaluate(place).Value;
    }

    private static string Shape(string formula) => Cell().Replace(formula, "x");

    private static IEnumerable<List<string>> Choices(IReadOnlyList<string> from, int count) =>
        count == 0
            ?
            [
                [],
            ]
            : Choices(from, count - 1).SelectMany(choice => from.Except(choice), (choice, next) => (List<string>)[.. choice, next]);

    [GeneratedRegex(
        @"=\s*[-+(]?(?:[A-Z]{1,2}\$?[0-9]|[0-9]+(?:\.[0-9]+)?\s*[*/+^-]|[A-Z.]{2,}\()[A-Z0-9$*/+^().,: -]*",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Example();

    [GeneratedRegex(@"\$?\b[A-Z]{1,2}\$?[0-9]{1,4}\b", RegexOptions.CultureInvariant)]
    private static partial Regex Cell();
}
