using ClassKit.Baking.Quantities;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Observations;

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
        var (before, after) = (0, 0);
        foreach (var observed in compared.Formula.Observations)
        {
            _row++;
            if (observed.Measure == Measure.MassBefore) before = _row;
            if (observed.Measure == Measure.MassAfter) after = _row;
            WriteMeasure(observed, compared, questions.Add(title, Words(observed.Measure), observed), before, after);
        }
        _row += 2;
    }

    private void WriteMeasure(Observation observed, LeaveningComparison compared, (string IfLess, string IfMore) questions, int before, int after)
    {
        var unit = ObservedUnit.For(observed.Measure, _pack.Class.Units);
        var format = unit.Decimals == 0 ? "0" : "0." + new string('0', unit.Decimals);
        _sheet.Cell(_row, 1).SetText(Words(observed.Measure));
        _sheet.Cell(_row, 2).SetText(unit.Symbol).AsQuiet();
        var prediction = Prediction.Of(observed.Measure, compared, _pack.BoilingPoint);
        if (prediction is not null && observed.Measure == Measure.MassAfter && before > 0)
            WriteWhatIsLeft(prediction.Value.Map(unit.Of), Prediction.BakeLoss(compared), before, format);
        else if (prediction is not null)
            WriteBand(prediction.Value.Map(unit.Of), format);
        for (var piece = 0; piece < Pieces; piece++)
        {
            if (observed.Measure == Measure.BakeLoss)
                WriteLoss(6 + piece, before, after, format);
            else
                _sheet.Cell(_row, 6 + piece).AsEntry();
            _sheet.Cell(_row, 6 + piece).Style.NumberFormat.Format = format;
        }

        var row = FormattableString.Invariant($"{_row}");
        Formula(9, $"IF(COUNT(F{row}:H{row})=0,\"\",AVERAGE(F{row}:H{row}))", unit.Decimals == 0 ? "0.0" : format);
        Formula(10, $"IF(OR(I{row}=\"\",D{row}=\"\"),\"\",I{row}-D{row})", unit.Decimals == 0 ? "+0.0;-0.0;0.0" : "+0.00;-0.00;0.00");
        Formula(LastColumn, $"IF(OR(I{row}=\"\",D{row}=\"\"),\"\",IF(I{row}<C{row},\"Less. \"&{questions.IfLess},IF(I{row}>E{row},\"More. \"&{questions.IfMore},\"{AsPredicted}\")))", "@");
        _sheet.Cell(_row, LastColumn).Wrapped().Style.Alignment.Indent = 1;
        _sheet.Range(_row, 1, _row, LastColumn).AsTableRow();
        _sheet.Row(_row).Height = Math.Max(20, Math.Max(TextHeight.Of("Less. " + _pack.Words(observed.IfLess), QuestionWidth - 2), TextHeight.Of("More. " + _pack.Words(observed.IfMore), QuestionWidth - 2)));
    }

    private void WriteBand(Band<double> band, string format)
    {
        foreach (var (index, value) in new[] { band.Low, band.Typical, band.High }.Index())
            _sheet.Cell(_row, 3 + index).SetValue(value).Style.NumberFormat.Format = format;
    }

    /// <summary>What is left is predicted from what was measured before, and from the card's portion until something was.</summary>
    private void WriteWhatIsLeft(Band<double> unmeasured, Band<double> loss, int before, string format)
    {
        foreach (var (index, (left, share)) in new[] { (unmeasured.Low, loss.High), (unmeasured.Typical, loss.Typical), (unmeasured.High, loss.Low) }.Index())
            Formula(3 + index, FormattableString.Invariant($"IF(I{before}=\"\",{left},I{before}*(1-{share}))"), format);
    }

    /// <summary>Worked out from the two masses of the same piece, as soon as both are there.</summary>
    private void WriteLoss(int column, int before, int after, string format)
    {
        var letter = CellAddress.ColumnLetters(column);
        if (before > 0 && after > 0)
            Formula(column, FormattableString.Invariant($"IF(COUNT({letter}{before},{letter}{after})<2,\"\",100*({letter}{before}-{letter}{after})/{letter}{before})"), format);
    }

    public void Finish()
    {
        _sheet.TabColor = Palette.Crust;
        _sheet.SetUpPage(_sheet.Range(1, 1, _row, LastColumn), XLPageOrientation.Landscape, _pack.Class.Paper, _pack.Class.Name, _pack.Lesson.Title);
    }

    private void Formula(int column, string formula, string format) => _sheet.Cell(_row, column).SetFormulaA1(formula).Style.NumberFormat.Format = format;

    private static string Words(Measure measure) => measure switch
    {
        Measure.MassBefore => "Mass before",
        Measure.MassAfter => "Mass after",
        Measure.BakeLoss => "Bake loss",
        Measure.Height => "Height",
        Measure.Diameter => "Width at its widest",
        Measure.InternalTemperature => "Middle, out of the oven",
    };
}
