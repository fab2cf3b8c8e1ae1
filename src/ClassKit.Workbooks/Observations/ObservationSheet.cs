using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;
using ClassKit.Wording.Counts;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Observations;

/// <summary>
/// A table a bread: what was predicted, up to three pieces to measure, their mean, the difference and the question that it asks.
/// </summary>
internal sealed class ObservationSheet
{
    private const int High = 5;
    private const int First = 6;
    private const int LastColumn = 11;
    private const double QuestionWidth = 45;

    /// <summary>A hundredth of a percent of what a bread weighs is less than any scale shows.</summary>
    private const int ShareDecimals = 4;
    private const string AsExpected = "As expected.";

    private readonly IXLWorksheet _sheet;
    private readonly LessonPack _pack;
    private readonly ObservationForm _form;
    private int _row = 6;

    /// <summary>The rows of the titles of breads and of their controls.</summary>
    private readonly List<int> _breads = [];

    /// <summary>
    /// What a sheet of paper on its side holds of rows, in points, at the size at which the columns fit: the smaller of A4 and Letter.
    /// </summary>
    private const double HeightOfASheet = 530;

    /// <summary>The row of the guess that shows what is expected of the bread at hand.</summary>
    private int _guess;

    public ObservationSheet(IXLWorksheet sheet, LessonPack pack)
    {
        (_sheet, _pack, _form) = (sheet, pack, new(pack));
        sheet.AsPage();
        sheet.Range(1, 1, 1, LastColumn).AsTitle();
        sheet.Cell(1, 1).SetText($" Observations: {pack.Lesson.Title}");
        sheet.Cell(4, 1).SetText(ObservedWords.Team);
        sheet.Range(4, 2, 4, 4).Merge();
        sheet.Cell(4, 2).AsEntry();
        sheet.Cell(4, 9).SetText(ObservedWords.Form).AsQuiet();
        sheet.Cell(4, 10).SetText(_form.Identity).AsQuiet();
        foreach (var (index, width) in new[] { 25, 6, 8, 8, 8, 8, 8, 9, 11, 13, QuestionWidth }.Index())
            sheet.Column(index + 1).Width = width;
        sheet
            .Across(
                2,
                1,
                LastColumn,
                "Type your guess first: what is expected appears then. Then what you measure, into the framed cells. A mean between low and high is as expected; outside, a question appears."
            )
            .AsQuiet();
    }

    /// <summary>The table of one bread, and of its control where it has one.</summary>
    /// <param name="bread">Its place in the lesson.</param>
    /// <param name="questions">Where its questions stand.</param>
    public void Write(int bread, QuestionSheet questions)
    {
        var (compared, seaLevel) = (_pack.Comparison[bread], _pack.AtSeaLevel.ElementAtOrDefault(bread));
        var title = compared.Bread.Formula.Title;
        var pieces = _form.PiecesOf(compared.Bread);
        _breads.Add(_row);
        WriteHeads(title, "One " + compared.Bread.Piece, pieces);
        if (_pack.Cards[bread] is { IsInstructors: false, Bread.Place: not null } card)
            _sheet
                .Cell(_row - 1, LastColumn)
                .SetText($"For {Counted.Noun(card.Teams.Count, "team")} {string.Join(", ", card.Teams)}")
                .Style.Alignment.Indent = 1;
        WriteGuess();
        WriteMix(title, _pack.Cards[bread].Mix, questions);
        WriteMeasures(title, compared.Bread.Observations, compared, seaLevel, pieces, questions);
        if (_pack.ControlOf(compared.Bread) is { } control)
        {
            _breads.Add(_row);
            var behind = control.BehindOf(compared.Bread);
            WriteHeads(behind.Bread.Formula.Title, "The control", 1);
            WriteMeasures("Control", behind.Bread.Observations, behind, null, 1, questions);
        }
    }

    private void WriteHeads(string title, string one, int pieces)
    {
        _sheet.Cell(_row, 1).SetText(title);
        _sheet.Range(_row, 1, _row, LastColumn).AsHeading();
        _row++;
        string[] heads =
        [
            one,
            "in",
            "Low",
            "Typical",
            "High",
            .. PieceHeads.Of(pieces),
            .. Enumerable.Repeat("", ObservationForm.MostPieces - pieces),
            "Mean",
            "Difference",
            "It asks",
        ];
        foreach (var (index, head) in heads.Index())
        {
            var cell = _sheet.Cell(_row, index + 1).SetText(head);
            if (index is > 1 and < 10)
                cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
            else if (index == 10)
                cell.Style.Alignment.Indent = 1;
        }
        _sheet.Range(_row, 1, _row, LastColumn).AsTableHead();
    }

    /// <summary>Nobody guesses who has read what is expected: it shows when a guess stands there.</summary>
    private void WriteGuess()
    {
        _row++;
        _guess = _row;
        var unit = ObservedUnit.For(Measure.GuessedHeight, _pack.Class.Units);
        WriteHead(ObservedWords.Of(Measure.GuessedHeight, isOvenBread: true), unit);
        WriteEntry(3, unit);
        _sheet.Range(_row, 1, _row, LastColumn).AsTableRow();
        _sheet.Row(_row).Height = 20;
    }

    private void WriteMeasures(
        string title,
        IReadOnlyList<Observation> observations,
        LeaveningComparison compared,
        LeaveningComparison? seaLevel,
        int pieces,
        QuestionSheet questions
    )
    {
        var (before, after) = (0, 0);
        foreach (var observed in observations)
        {
            _row++;
            if (observed.Measure == Measure.MassBefore)
                before = _row;
            if (observed.Measure == Measure.MassAfter)
                after = _row;
            WriteMeasure(
                observed,
                compared,
                questions.Add(title, ObservedWords.Of(observed.Measure, compared.Bread.IsOvenBread), observed.IfLess, observed.IfMore),
                before,
                after,
                pieces
            );
            if (seaLevel is not null)
                WriteSeaLevel(observed.Measure, compared, seaLevel);
        }
        _row += 2;
    }

    /// <summary>One bowl, measured once: the same band as on card and observation page.</summary>
    private void WriteMix(string title, MixBalance mix, QuestionSheet questions)
    {
        _row++;
        var (asked, unit) = (AskedOfEveryBread.Mix, ObservedUnit.For(Measure.MixedTemperature, _pack.Class.Units));
        var name = ObservedWords.Of(asked.Measure, isOvenBread: true);
        WriteHead(name, unit);
        foreach (var (index, value) in Rounded(mix.Mixed.Map(mixed => unit.Of(mixed.Celsius)), unit).Index())
            _sheet.Cell(_row, 3 + index).SetValue(value).Style.NumberFormat.Format = FormatOf(unit);
        WriteEntry(First, unit);
        WriteJudgement(unit, questions.Add(title, name, asked.IfLess, asked.IfMore), asked.IfLess, asked.IfMore);
    }

    private void WriteMeasure(
        Observation observed,
        LeaveningComparison compared,
        (string IfLess, string IfMore) questions,
        int before,
        int after,
        int pieces
    )
    {
        var unit = ObservedUnit.For(observed.Measure, _pack.Class.Units);
        var format = FormatOf(unit);
        WriteHead(ObservedWords.Of(observed.Measure, compared.Bread.IsOvenBread), unit);
        var prediction = Prediction.Of(observed.Measure, compared, _pack.BoilingPoint);
        if (prediction is not null && observed.Measure == Measure.MassAfter && before > 0)
            WriteWhatIsLeft(prediction.Value.Map(unit.Of), Prediction.BakeLoss(compared), before, unit);
        else if (prediction is not null)
            WriteBand(prediction.Value.Map(unit.Of), unit);
        else if (Prediction.IsBeyondUs(observed.Measure, compared))
            _sheet.Cell(_row, 3).SetText("cannot be predicted").AsQuiet();
        for (var piece = 0; piece < pieces; piece++)
        {
            if (observed.Measure == Measure.BakeLoss)
                WriteLoss(First + piece, before, after, format);
            else
                WriteEntry(First + piece, unit);
        }
        WriteJudgement(unit, questions, observed.IfLess, observed.IfMore);
    }

    /// <summary>What the same bread as written would come to at sea level, right below what it is expected to come to here.</summary>
    private void WriteSeaLevel(Measure measure, LeaveningComparison here, LeaveningComparison seaLevel)
    {
        if (Prediction.Of(measure, seaLevel, Saturation.BoilingPoint(Pressure.Standard)) is not { } prediction)
            return;
        _row++;
        var unit = ObservedUnit.For(measure, _pack.Class.Units);
        _sheet.Range(_row, 1, _row, LastColumn).AsTableRow();
        WriteHead(Prediction.IsKnownApart(measure, here, seaLevel) ? "    at sea level" : "    at sea level, walls alike", unit);
        WriteBand(prediction.Value.Map(unit.Of), unit);
        foreach (var column in Enumerable.Range(1, High))
            _sheet.Cell(_row, column).AsQuiet();
    }

    private void WriteHead(string name, ObservedUnit unit)
    {
        _sheet.Cell(_row, 1).SetText(name);
        _sheet.Cell(_row, 2).SetText(unit.Symbol).AsQuiet();
    }

    private void WriteEntry(int column, ObservedUnit unit)
    {
        _sheet.Cell(_row, column).AsEntry();
        _sheet.Cell(_row, column).Style.NumberFormat.Format = FormatOf(unit);
    }

    /// <summary>The mean of what was measured, how far it is from what was expected, and what that asks.</summary>
    private void WriteJudgement(ObservedUnit unit, (string IfLess, string IfMore) questions, TextTemplate ifLess, TextTemplate ifMore)
    {
        var row = FormattableString.Invariant($"{_row}");
        Formula(9, $"IF(COUNT(F{row}:H{row})=0,\"\",AVERAGE(F{row}:H{row}))", unit.Decimals == 0 ? "0.0" : FormatOf(unit));
        Formula(10, $"IF(OR(I{row}=\"\",D{row}=\"\"),\"\",I{row}-D{row})", unit.Decimals == 0 ? "+0.0;-0.0;0.0" : "+0.00;-0.00;0.00");
        Formula(
            LastColumn,
            $"IF(OR(I{row}=\"\",D{row}=\"\"),\"\",IF(ROUND(I{row},{unit.Decimals})<C{row},\"Less. \"&{questions.IfLess},IF(ROUND(I{row},{unit.Decimals})>E{row},\"More. \"&{questions.IfMore},\"{AsExpected}\")))",
            "@"
        );
        _sheet.Cell(_row, LastColumn).Wrapped().Style.Alignment.Indent = 1;
        _sheet.Range(_row, 1, _row, LastColumn).AsTableRow();
        _sheet.Row(_row).Height = Math.Max(
            20,
            Math.Max(
                TextHeight.Of("Less. " + _pack.Words(ifLess), QuestionWidth - 2),
                TextHeight.Of("More. " + _pack.Words(ifMore), QuestionWidth - 2)
            )
        );
    }

    private static string FormatOf(ObservedUnit unit) => unit.Decimals == 0 ? "0" : "0." + new string('0', unit.Decimals);

    /// <summary>What is judged is what stands there, and it stands there once a guess does.</summary>
    private void WriteBand(Band<double> band, ObservedUnit unit)
    {
        foreach (var (index, value) in Rounded(band, unit).Index())
            Formula(3 + index, FormattableString.Invariant($"IF($C${_guess}=\"\",\"\",{value})"), FormatOf(unit));
    }

    /// <summary>To what a ruler or a scale shows, as the page has it.</summary>
    private static double[] Rounded(Band<double> band, ObservedUnit unit) =>
        [.. new[] { band.Low, band.Typical, band.High }.Select(value => CellNumber.Rounded(value, unit.Decimals))];

    /// <summary>What is left is predicted from what was measured before, and from the card's portion until something was.</summary>
    private void WriteWhatIsLeft(Band<double> unmeasured, Band<double> loss, int before, ObservedUnit unit)
    {
        foreach (
            var (index, (left, share)) in Rounded(unmeasured, unit)
                .Zip(new[] { loss.High, loss.Typical, loss.Low }.Select(share => CellNumber.Rounded(share, ShareDecimals)))
                .Index()
        )
            Formula(
                3 + index,
                FormattableString.Invariant(
                    $"IF($C${_guess}=\"\",\"\",ROUND(IF(I{before}=\"\",{left},I{before}*(1-{share})),{unit.Decimals}))"
                ),
                FormatOf(unit)
            );
    }

    /// <summary>Worked out from the two masses of the same piece, as soon as both are there.</summary>
    private void WriteLoss(int column, int before, int after, string format)
    {
        var letter = CellAddress.ColumnLetters(column);
        if (before > 0 && after > 0)
            Formula(
                column,
                FormattableString.Invariant(
                    $"IF(COUNT({letter}{before},{letter}{after})<2,\"\",{InPercent.Of(FormattableString.Invariant($"({letter}{before}-{letter}{after})/{letter}{before}"))})"
                ),
                format
            );
    }

    public void Finish()
    {
        _sheet.TabColor = Palette.Crust;
        _sheet.SetUpPage(
            _sheet.Range(1, 1, _row, LastColumn),
            XLPageOrientation.Landscape,
            _pack.Class.Paper,
            _pack.Class.Name,
            _pack.Lesson.Title
        );
        BreakBetweenBreads();
        _sheet.ProtectFromSlips();
    }

    /// <summary>A bread whose rows would be parted begins on a sheet of its own.</summary>
    private void BreakBetweenBreads()
    {
        var begun = 1;
        foreach (var (first, next) in _breads.Zip(_breads.Skip(1).Append(_row + 1)))
        {
            if (first == begun || Height(begun, next) <= HeightOfASheet)
                continue;
            _sheet.PageSetup.AddHorizontalPageBreak(first - 1);
            begun = first;
        }
    }

    private double Height(int from, int to) => Enumerable.Range(from, to - from).Sum(row => _sheet.Row(row).Height);

    private void Formula(int column, string formula, string format) =>
        _sheet.Cell(_row, column).SetFormulaA1(formula).Style.NumberFormat.Format = format;
}
