using ClassKit.Baking;
using ClassKit.Lessons;
using ClosedXML.Excel;

namespace ClassKit.Workbooks;

/// <summary>A table a bread: what was predicted, three pieces to measure, their mean, the difference and the question that it asks.</summary>
internal sealed class ObservationSheet
{
    private const int Pieces = 3;
    private const int LastColumn = 11;
    private const double QuestionWidth = 62;
    private const string AsPredicted = "as predicted";

    private readonly IXLWorksheet _sheet;
    private readonly LessonPack _pack;
    private int _row = 6;

    public ObservationSheet(IXLWorksheet sheet, LessonPack pack)
    {
        (_sheet, _pack) = (sheet, pack);
        sheet.AsPage();
        sheet.Range(1, 1, 1, LastColumn).AsTitle();
        sheet.Cell(1, 1).SetText($" Observations: {pack.Lesson.Title}");
        sheet.Cell(2, 1).SetText("Type what you measure into the framed cells. A mean between low and high is as predicted; outside, a question appears.").AsQuiet();
        sheet.Cell(4, 1).SetText("Team");
        sheet.Range(4, 2, 4, 4).Merge();
        sheet.Cell(4, 2).AsEntry();
        foreach (var (index, width) in new[] { 23, 6, 8, 8, 8, 8, 8, 9, 11, 13, QuestionWidth }.Index())
            sheet.Column(index + 1).Width = width;
    }

    public void Write(LeaveningComparison compared, QuestionSheet questions)
    {
        var title = compared.Formula.Formula.Title;
        _sheet.Cell(_row, 1).SetText(title);
        _sheet.Range(_row, 1, _row, LastColumn).AsHeading();
        _row++;
        string[] heads = ["One " + compared.Formula.Piece, "in", "Low", "Typical", "High", "First", "Second", "Third", "Mean", "Difference", "It asks"];
        foreach (var (index, head) in heads.Index())
        {
            var cell = _sheet.Cell(_row, index + 1).SetText(head);
            if (index is > 1 and < 10) cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        }
        _sheet.Range(_row, 1, _row, LastColumn).AsTableHead();
        var before = 0;
        foreach (var observed in compared.Formula.Observations)
        {
            _row++;
            if (observed.Measure == Measure.MassBefore) before = _row;
            WriteMeasure(observed, compared, questions.Add(title, Words(observed.Measure), observed), before);
        }
        _row += 2;
    }

    private void WriteMeasure(Observation observed, LeaveningComparison compared, (string IfLess, string IfMore) questions, int before)
    {
        var unit = ObservedUnit.For(observed.Measure, _pack.Class.Units);
        var format = unit.Decimals == 0 ? "0" : "0." + new string('0', unit.Decimals);
        _sheet.Cell(_row, 1).SetText(Words(observed.Measure));
        _sheet.Cell(_row, 2).SetText(unit.Symbol).AsQuiet();
        if (observed.Measure == Measure.MassAfter && before > 0)
            WriteLoss(compared, before, format);
        else if (Prediction.Of(observed.Measure, compared, _pack.BoilingPoint) is { } prediction)
            WriteBand(prediction.Value.Map(unit.Of), format);
        for (var piece = 0; piece < Pieces; piece++)
        {
            var cell = _sheet.Cell(_row, 6 + piece);
            cell.AsEntry();
            cell.Style.NumberFormat.Format = format;
        }

        var row = FormattableString.Invariant($"{_row}");
        Formula(9, $"IF(COUNT(F{row}:H{row})=0,\"\",AVERAGE(F{row}:H{row}))", unit.Decimals == 0 ? "0.0" : format);
        Formula(10, $"IF(OR(I{row}=\"\",D{row}=\"\"),\"\",I{row}-D{row})", unit.Decimals == 0 ? "+0.0;-0.0;0.0" : "+0.00;-0.00;0.00");
        Formula(LastColumn, $"IF(OR(I{row}=\"\",D{row}=\"\"),\"\",IF(I{row}<C{row},\"Less. \"&{questions.IfLess},IF(I{row}>E{row},\"More. \"&{questions.IfMore},\"{AsPredicted}\")))", "@");
        _sheet.Cell(_row, LastColumn).Wrapped().Style.Alignment.Indent = 1;
        _sheet.Range(_row, 1, _row, LastColumn).AsTableRow();
        _sheet.Row(_row).Height = Math.Max(20, Math.Max(TextHeight.Of("Less. " + observed.IfLess, QuestionWidth - 2), TextHeight.Of("More. " + observed.IfMore, QuestionWidth - 2)));
    }

    private void WriteBand(Band<double> band, string format)
    {
        foreach (var (index, value) in new[] { band.Low, band.Typical, band.High }.Index())
            _sheet.Cell(_row, 3 + index).SetValue(value).Style.NumberFormat.Format = format;
    }

    /// <summary>What is left is predicted from what was measured before, and from the card's portion until something was.</summary>
    private void WriteLoss(LeaveningComparison compared, int before, string format)
    {
        var loss = Prediction.BakeLoss(compared);
        var mass = FormattableString.Invariant($"IF(I{before}=\"\",$D{before},I{before})");
        foreach (var (index, share) in new[] { loss.High, loss.Typical, loss.Low }.Index())
            Formula(3 + index, FormattableString.Invariant($"{mass}*(1-{share})"), format);
    }

    public void Finish()
    {
        _sheet.TabColor = Palette.Crust;
        _sheet.SetUpPage(_sheet.Range(1, 1, _row, LastColumn), XLPageOrientation.Landscape, _pack.Class.Name, _pack.Lesson.Title);
    }

    private void Formula(int column, string formula, string format) => _sheet.Cell(_row, column).SetFormulaA1(formula).Style.NumberFormat.Format = format;

    private static string Words(Measure measure) => measure switch
    {
        Measure.MassBefore => "Mass before",
        Measure.MassAfter => "Mass after",
        Measure.Height => "Height",
        Measure.Diameter => "Width at its widest",
        Measure.InternalTemperature => "Middle, out of the oven",
    };
}
