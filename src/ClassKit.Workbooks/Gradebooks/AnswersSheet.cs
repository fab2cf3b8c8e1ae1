using ClassKit.Exercises.Texts;
using ClassKit.Grading.Results;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Outcomes;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>Every answer with what it was judged by, for looking up and for filtering.</summary>
internal static class AnswersSheet
{
    public const string Name = "Answers";
    public const string PartHead = "Part";
    public const string PointsHead = "Points";

    public static void Write(XLWorkbook workbook, ClassGrades grades, GradebookGrid grid)
    {
        var sheet = new ListSheet(
            workbook,
            Name,
            $"Answers: {grades.Dealt.LessonTitle}",
            "As graded. Changes on other sheets do not show here.",
            [
                new("Student", 24),
                new(PartHead, 6),
                new("Outcome", 16),
                new(PointsHead, 7, true),
                new("Out of", 7, true),
                // Options and sentences in full stand on the pages; here one of them made a row of ten lines.
                new("Value", 10, true) { BreaksLines = false },
                new("Expected", 10, true) { BreaksLines = false },
                new("Formula", 34),
                new("Note", 60),
                // For filtering: on paper the note says it in full.
                new("Nearest wrong turn", 40, OnPaper: false),
                new(GradebookGrid.IdHead, GridHead.IdWidth, OnPaper: false),
            ]
        );
        foreach (var student in grades.Students)
        {
            foreach (var answer in student.Answers)
            {
                sheet.Add(
                    student.Who.Shown,
                    grid.TagOf(answer),
                    OutcomeText.Brief(OutcomeText.Shown(answer.Outcome, answer.Part)),
                    answer.IsUndecided ? PointsSheet.Undecided : answer.Points,
                    answer.OutOf,
                    Shown(answer),
                    answer.Part.IsNumber ? answer.Expected : ResultText.Of(answer.Part, answer.Expected),
                    answer.Formula,
                    FindingWords.BeyondOutcome(answer),
                    NearestTurn.Of(answer),
                    student.Who.Id
                );
            }
        }

        var isEmpty = grades.Students.All(student => student.Answers.Count == 0);
        if (isEmpty)
            sheet.AddNothing("No workbook was graded.");
        sheet.Finish(Palette.Band, grades.Dealt, canFilter: !isEmpty);
    }

    private static object Shown(AnswerGrade answer) =>
        answer.Chosen is { } chosen ? chosen.Words
        : answer.Value.IsNumber ? answer.Value.Number
        : answer.Value.ToString();
}
