using System.Globalization;
using ClassKit.Terms.Bench;
using ClassKit.Wording.Cohorts;
using ClassKit.Workbooks.Look;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Bench;

/// <summary>
/// Makes the workbook that bench marks are typed into: a row a team and a row a student, a column a criterion, a level to choose in each
/// cell.
/// </summary>
public static class BenchMarksWriter
{
    private const string Explanation =
        "Choose a level for each team. A student has the team's levels, but for those chosen in the student's own row. Put another team, or away, under Team where somebody worked elsewhere or not at all.";
    private const double CriterionWidth = 10.5;
    private const double CommentWidth = 25;
    private const double NameWidth = 22;
    private const double IdWidth = 12;

    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    public static byte[] Write(BenchForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Bench marks: {form.Rubric}{ClassName.Behind(form.Cohort)}";
        var sheet = workbook.AddWorksheet(BenchGrid.Sheet);
        var last = BenchGrid.CommentColumn(form);
        sheet.AsPage();
        Head(sheet, form, last);
        var row = BenchGrid.FirstRow;
        for (var team = 1; team <= form.Teams; team++)
            Row(sheet, form, row++, $"Team {form.TeamName(team)}", BenchGrid.IdOf(team), null);
        var firstStudent = row;
        foreach (var (index, student) in form.Students.Index())
            Row(sheet, form, row++, student.Shown, student.Id, form.TeamOf(index));
        Rules(sheet, form, firstStudent, row - 1);
        sheet.SheetView.Freeze(BenchGrid.HeadRow, BenchGrid.WhoColumn);
        sheet.SetUpPage(sheet.Range(1, 1, row - 1, last), XLPageOrientation.Landscape, form.Paper, form.Cohort, form.Rubric);
        sheet.PageSetup.SetRowsToRepeatAtTop(BenchGrid.HeadRow, BenchGrid.HeadRow);
        var lastOfFirst = sheet.SpreadOverPages(
            form.Paper,
            last,
            BenchGrid.WhoColumn,
            Enumerable.Range(BenchGrid.FirstCriterion, last - BenchGrid.FirstCriterion + 1)
        );
        sheet.Across(2, BenchGrid.IdColumn, lastOfFirst, Explanation).AsQuiet();
        sheet.ProtectFromSlips();
        LevelsSheet.Write(workbook, form);
        return workbook.ToBytes();
    }

    private static void Head(IXLWorksheet sheet, BenchForm form, int last)
    {
        sheet.Range(1, 1, 1, last).AsTitle();
        sheet.Cell(1, 1).SetText($" {form.Rubric}");
        sheet.Cell(BenchGrid.MarkerRow, 1).SetText(BenchGrid.MarkerHead);
        sheet.Cell(BenchGrid.MarkerRow, 2).AsEntry();
        sheet.Cell(BenchGrid.MarkerRow, BenchGrid.TeamColumn).SetText(BenchGrid.FormHead).AsQuiet();
        sheet.Cell(BenchGrid.MarkerRow, BenchGrid.FirstCriterion).SetText(form.Identity).AsQuiet();
        string[] heads =
        [
            BenchGrid.WhoHead,
            BenchGrid.IdHead,
            BenchGrid.TeamHead,
            .. form.Scale.Criteria.Select(criterion => criterion.Name),
            BenchGrid.CommentHead,
        ];
        foreach (var (index, text) in heads.Index())
            sheet.Cell(BenchGrid.HeadRow, index + 1).SetText(text).Wrapped();
        sheet.Range(BenchGrid.HeadRow, 1, BenchGrid.HeadRow, last).AsTableHead();
        sheet.Row(BenchGrid.HeadRow).Height = heads.Skip(BenchGrid.FirstCriterion - 1).Max(text => TextHeight.Of(text, CriterionWidth - 1));
        foreach (var column in Enumerable.Range(1, last))
        {
            sheet.Column(column).Width = column switch
            {
                BenchGrid.WhoColumn => NameWidth,
                BenchGrid.IdColumn => IdWidth,
                BenchGrid.TeamColumn => 6.5,
                _ => column == last ? CommentWidth : CriterionWidth,
            };
        }
    }

    private static void Row(IXLWorksheet sheet, BenchForm form, int row, string who, string id, int? team)
    {
        var name = sheet.Cell(row, BenchGrid.WhoColumn).SetText(who).Wrapped();
        sheet.Cell(row, BenchGrid.IdColumn).SetText(id).Wrapped().AsQuiet();
        if (team is { } number)
        {
            var cell = sheet.Cell(row, BenchGrid.TeamColumn);
            (
                int.TryParse(form.TeamName(number), NumberStyles.None, CultureInfo.InvariantCulture, out var shown)
                    ? cell.SetValue(shown)
                    : cell.SetText(form.TeamName(number))
            ).AsEntry();
            cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        }
        else
        {
            name.Style.Font.Bold = true;
            sheet.Range(row, 1, row, BenchGrid.TeamColumn).Style.Fill.BackgroundColor = Palette.Crumb;
        }
        for (var column = BenchGrid.FirstCriterion; column <= BenchGrid.CommentColumn(form); column++)
        {
            var cell = sheet.Cell(row, column);
            cell.AsEntry();
            if (column == BenchGrid.CommentColumn(form))
                cell.Wrapped();
        }
        sheet.Row(row).Height = Math.Max(20, Math.Max(TextHeight.Of(who, NameWidth), TextHeight.Of(id, IdWidth)));
    }

    /// <summary>What can be chosen; another number, or a level's points, are not refused.</summary>
    private static void Rules(IXLWorksheet sheet, BenchForm form, int firstStudent, int lastRow)
    {
        var levels = sheet
            .Range(BenchGrid.FirstRow, BenchGrid.FirstCriterion, lastRow, BenchGrid.CommentColumn(form) - 1)
            .SetDataValidation();
        levels.List(
            FormattableString.Invariant(
                $"='{BenchGrid.LevelsSheet}'!$A${LevelsSheet.FirstLevel}:$A${LevelsSheet.FirstLevel + form.Scale.Levels.Count - 1}"
            ),
            true
        );
        levels.IgnoreBlanks = true;
        levels.ErrorStyle = XLErrorStyle.Warning;
        levels.ErrorTitle = "No such level";
        levels.ErrorMessage = $"Choose one of {string.Join(", ", form.Scale.LevelNames)}.";
        if (lastRow < firstStudent)
            return;
        var teams = sheet.Range(firstStudent, BenchGrid.TeamColumn, lastRow, BenchGrid.TeamColumn).SetDataValidation();
        teams.List($"\"{string.Join(',', Enumerable.Range(1, form.Teams).Select(form.TeamName).Append(BenchForm.Away))}\"", true);
        teams.IgnoreBlanks = true;
        teams.ErrorStyle = XLErrorStyle.Warning;
        teams.ErrorMessage =
            $"Choose one of {string.Join(", ", Enumerable.Range(1, form.Teams).Select(form.TeamName))}, or {BenchForm.Away}.";
    }
}
