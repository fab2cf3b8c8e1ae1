using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Packs;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Observations;

/// <summary>
/// The questions that differences ask, where an instructor can reword them; the sheet of observations shows the one that fits.
/// </summary>
internal sealed class QuestionSheet
{
    public const string Name = "Questions";
    private const int Less = 3;
    private const int More = 4;
    private const double BreadWidth = 24;
    private const double TextWidth = 52;

    /// <summary>What a step of indentation takes of a column and leaves beside the next, in characters.</summary>
    private const double Indent = 3;

    private readonly IXLWorksheet _sheet;
    private readonly LessonPack _pack;
    private int _row = 4;

    public QuestionSheet(IXLWorksheet sheet, LessonPack pack)
    {
        (_sheet, _pack) = (sheet, pack);
        sheet.AsPage();
        sheet.Range(1, 1, 1, More).AsTitle();
        sheet.Cell(1, 1).SetText(" Questions");
        sheet.Cell(2, 1).SetText("Reword them as you like: the other sheet shows the one that fits.").AsQuiet();
        foreach (
            var (index, (head, width)) in new[]
            {
                ("Bread", BreadWidth),
                ("Measure", 22.0),
                ("If less", TextWidth),
                ("If more", TextWidth),
            }.Index()
        )
        {
            sheet.Column(index + 1).Width = width;
            sheet.Cell(_row, index + 1).SetText(head);
        }
        sheet.Range(_row, 1, _row, More).AsTableHead();
        sheet.SheetView.FreezeRows(_row);
    }

    /// <summary>Adds a row and gives the cells of its two questions.</summary>
    public (string IfLess, string IfMore) Add(string bread, string measure, TextTemplate ifLess, TextTemplate ifMore)
    {
        _row++;
        var (less, more) = (_pack.Words(ifLess), _pack.Words(ifMore));
        _sheet.Range(_row, 1, _row, More).AsTableRow();
        _sheet.Cell(_row, 1).SetText(bread).Wrapped();
        _sheet.Cell(_row, 2).SetText(measure);
        _sheet.Cell(_row, Less).SetText(less).Wrapped();
        _sheet.Cell(_row, More).SetText(more).Wrapped();
        foreach (var question in (int[])[Less, More])
        {
            _sheet.Cell(_row, question).AsEntry();
            _sheet.Cell(_row, question).Style.Alignment.Indent = 1;
        }
        _sheet.Row(_row).Height = Math.Max(
            TextHeight.Of(bread, BreadWidth),
            Math.Max(TextHeight.Of(less, TextWidth - Indent), TextHeight.Of(more, TextWidth - Indent))
        );
        return (FormattableString.Invariant($"{Name}!$C${_row}"), FormattableString.Invariant($"{Name}!$D${_row}"));
    }

    public void Finish()
    {
        _sheet.SetUpPage(
            _sheet.Range(1, 1, _row, More),
            XLPageOrientation.Landscape,
            _pack.Class.Paper,
            _pack.Class.Name,
            _pack.Lesson.Title
        );
        _sheet.PageSetup.SetRowsToRepeatAtTop(4, 4);
        _sheet.ProtectFromSlips();
    }
}
