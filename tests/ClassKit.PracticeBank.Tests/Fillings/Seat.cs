using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>One student's place in a deal, whose workbook can be filled in again and again.</summary>
internal sealed record Seat(DealtClass Dealt, ClassGrader Grader, DealtStudent Student, WorkbookSnapshot Blank)
{
    private readonly PracticeLayout _layout = Dealt.LayOut();

    /// <summary>Fills every part and grades the workbook.</summary>
    /// <param name="fill">What stands in the part's cell: a formula with its =, a text, a number, or null for nothing.</param>
    public IReadOnlyList<AnswerGrade> Grade(Func<Desk, Part, object?> fill)
    {
        var judged = Grader.Begin();
        judged.Add(Grader.Judge(Return(fill)));
        return Grader.Settle(judged).Students.Single(graded => graded.Who.Id == Student.Who.Id).Answers;
    }

    /// <summary>Fills every part, as <see cref="Grade"/> does, and hands the workbook in.</summary>
    public ReturnedFile Return(Func<Desk, Part, object?> fill)
    {
        var sheets = Blank.Sheets.ToDictionary(
            sheet => sheet.Name,
            sheet => new Dictionary<(int Row, int Column), CellContent>(sheet.Cells)
        );
        foreach (var exercise in _layout.Exercises)
        {
            var desk = new Desk(exercise, Student);
            foreach (var part in exercise.Exercise.Parts)
            {
                if (Content(fill(desk, part)) is not { } content)
                    continue;
                var cell = desk.Cell(part.Id);
                sheets[cell.Sheet][(cell.Row, cell.Column)] = content;
            }
            foreach (var (cell, formula) in desk.Scratch)
                sheets[cell.Sheet][(cell.Row, cell.Column)] = Content(formula)!;
        }
        var workbook = Blank with { Sheets = [.. Blank.Sheets.Select(sheet => sheet with { Cells = sheets[sheet.Name] })] };
        return new($"{Student.Who.Id}.xlsx", workbook, null);
    }

    private static CellContent? Content(object? content) =>
        content switch
        {
            null => null,
            string text when text.StartsWith('=') => new(CellValue.Blank, text[1..]),
            string text => new(CellValue.FromText(text)),
            double number => new(CellValue.FromNumber(number)),
            bool logical => new(CellValue.FromLogical(logical)),
            _ => throw new ArgumentException("A text, a number or a logical.", nameof(content)),
        };
}
