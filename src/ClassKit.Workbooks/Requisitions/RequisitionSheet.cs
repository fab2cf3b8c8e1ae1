using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Purchasing;
using ClassKit.Lessons.Series;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Requisitions;

/// <summary>The one sheet of a requisition: what can be changed on top, a row an ingredient, sums below.</summary>
internal sealed class RequisitionSheet
{
    private const int Students = 4;
    private const int PerTeam = 5;
    private const int Teams = 6;
    private const int Extra = 7;
    private const int Loads = 8;
    private const int Head = 9;
    private const int First = 10;
    private const double IngredientWidth = 27;

    /// <summary>What is worked out in grams or ounces: tenths where they are seen.</summary>
    /// <summary>From here on nobody reads the decimals of what a pack holds; the sums keep them.</summary>
    private const double WholeFrom = 100;

    private const string Grams = "[<100]0.0;#,##0";
    private const double BreadWidth = 11;

    private readonly IXLWorksheet _sheet;
    private readonly LessonPack _pack;
    private readonly RequisitionColumns _columns;
    private readonly SheetMass _mass;
    private readonly int _last;

    private RequisitionSheet(IXLWorksheet sheet, LessonPack pack)
    {
        (_sheet, _pack) = (sheet, pack);
        _columns = new(
            pack.Cards.Count,
            pack.Requisition.Any(line => line.Filling is not null),
            pack.Requisition.Any(line => line.Shown.Grams > 0)
        );
        _mass = SheetMass.For(pack.Class.Units);
        _last = First + Math.Max(pack.Requisition.Count, 1) - 1;
    }

    public static void Write(XLWorkbook workbook, LessonPack pack)
    {
        var sheet = new RequisitionSheet(workbook.AddWorksheet("Requisition"), pack);
        sheet.WriteTop();
        sheet.WriteHeads();
        for (var index = 0; index < pack.Requisition.Count; index++)
            sheet.WriteLine(pack.Requisition[index], First + index);
        sheet.WriteSums();
        sheet.SetUpPrint();
    }

    private void WriteTop()
    {
        _sheet.AsPage();
        _sheet.Range(1, 1, 1, _columns.Last).AsTitle();
        // The first column stands on every sheet side by side, so that only short words may stand in it.
        _sheet.Cell(1, 1).SetText(" Requisition");
        _sheet.Cell(1, 2).SetText(_pack.Lesson.Title);

        Setting(Students, "Students", _pack.Class.Students, "0");
        Setting(
            PerTeam,
            "Students a team, on average",
            (decimal)_pack.Class.Students / _pack.Class.Teams,
            FormatOf((double)_pack.Class.Students / _pack.Class.Teams)
        );
        _sheet.Cell(Teams, 1).SetText("Teams");
        // Rounded before it is rounded up: 25 students at 25/6 a team are 6 teams, not 7.
        _sheet.Cell(Teams, 2).SetFormulaA1($"IF(B{PerTeam}>0,ROUNDUP(ROUND(B{Students}/B{PerTeam},6),0),0)");
        Setting(Extra, "Extra for spills", 0, "0 %");
        _sheet.Cell(Loads, 1).SetText("Loads of each bread");
        foreach (var (index, card) in _pack.Cards.Index())
        {
            var cell = _sheet.Cell(Loads, RequisitionColumns.Bread(index));
            if (card.IsInstructors)
                cell.SetValue(card.Loads);
            else
                cell.SetFormulaA1(LoadsOf(card));
        }
    }

    /// <summary>
    /// How many teams make it. Those that share out a series take its breads in turn, and none is left out: as
    /// <see cref="SharedOut.TeamsOf"/> counts.
    /// </summary>
    private string LoadsOf(FormulaCard card)
    {
        if (card.Bread.Place is not { } place)
            return $"$B${Teams}";
        var series = _pack.Cards.Where(other => other.Bread.Place?.OfId == place.OfId).ToList();
        return FormattableString.Invariant($"IF($B${Teams}>0,MAX(1,ROUNDUP(($B${Teams}-{series.IndexOf(card)})/{series.Count},0)),0)");
    }

    private void Setting(int row, string name, decimal value, string format)
    {
        _sheet.Cell(row, 1).SetText(name);
        var cell = _sheet.Cell(row, 2);
        cell.SetShare(value).AsAnswer();
        cell.Style.NumberFormat.Format = format;
    }

    private void WriteHeads()
    {
        HeadCell(1, "Ingredient", IngredientWidth, isNumber: false);
        foreach (var (index, card) in _pack.Cards.Index())
            HeadCell(RequisitionColumns.Bread(index), HeadOf(card), BreadWidth);
        HeadCell(_columns.Needed, $"Needed, {_mass.Symbol}", 11);
        HeadCell(_columns.OnHand, $"In the store, {_mass.Symbol}", 10);
        HeadCell(_columns.Pack, "Pack", 19, isNumber: false);
        HeadCell(_columns.Holds, $"It holds, {_mass.Symbol}", 10);
        HeadCell(_columns.Price, $"Its price{InCurrency}", 10);
        HeadCell(_columns.PerKilogram, $"{_mass.Larger}{InCurrency}", 11);
        HeadCell(_columns.Packs, "Packs to buy", 8);
        HeadCell(_columns.ToPay, $"To pay{InCurrency}", 11);
        HeadCell(_columns.Used, $"Worth of what is used{InCurrency}", 11);
        HeadCell(_columns.Allergens, "Allergens, labels read besides", 24, isNumber: false);
        if (_columns.Fryers is { } fryers)
            HeadCell(fryers, $"Fryers filled once, {_mass.Symbol}", 12);
        if (_columns.Shown is { } shown)
            HeadCell(shown, $"For demonstrations, {_mass.Symbol}", 16);
        _sheet.Range(Head, 1, Head, _columns.Last).AsTableHead();
        _sheet.Row(Head).Height = Enumerable
            .Range(1, _columns.Last)
            .Max(column => TextHeight.Of(_sheet.Cell(Head, column).GetString(), _sheet.Column(column).Width - 1.5));
        _sheet.SheetView.Freeze(Head, 1);
    }

    private string HeadOf(FormulaCard card) => $"{card.Bread.Formula.Title}, {_mass.Symbol} a load";

    private string LoadsOfAll =>
        FormattableString.Invariant(
            $"${CellAddress.ColumnLetters(RequisitionColumns.Bread(0))}${Loads}:${CellAddress.ColumnLetters(RequisitionColumns.Bread(_pack.Cards.Count - 1))}${Loads}"
        );

    private string InCurrency => _pack.Class.Prices is { } prices ? ", " + prices.Currency : "";

    private void HeadCell(int column, string text, double width, bool isNumber = true)
    {
        _sheet.Column(column).Width = width;
        var cell = _sheet.Cell(Head, column).SetText(text).Wrapped();
        cell.Style.Alignment.Horizontal = isNumber ? XLAlignmentHorizontalValues.Right : XLAlignmentHorizontalValues.Left;
        cell.Style.Alignment.Vertical = XLAlignmentVerticalValues.Bottom;
        if (!isNumber && column > 1)
            cell.Style.Alignment.Indent = 1;
    }

    private void WriteLine(RequisitionLine line, int row)
    {
        _sheet.Range(row, 1, row, _columns.Last).AsTableRow();
        _sheet.Row(row).Height = 18;
        _sheet.Cell(row, 1).SetText(line.Ingredient.Name);
        foreach (var (index, card) in _pack.Cards.Index())
        {
            if (line.Uses.FirstOrDefault(use => use.Bread.Formula.Id == card.Bread.Formula.Id) is { } use)
                Amount(row, RequisitionColumns.Bread(index), _mass.Of((double)((decimal)use.Mass.Grams / card.Loads)));
        }

        Formula(
            row,
            _columns.Needed,
            $"(SUMPRODUCT({At(RequisitionColumns.Bread(0), row)}:{At(RequisitionColumns.Bread(_pack.Cards.Count - 1), row)},{LoadsOfAll}){Beside(row)})*(1+$B${Extra})",
            Grams
        );
        if (_columns.Fryers is { } fryers && line.Filling is { } filling)
            Formula(row, fryers, Filled(filling), Grams);
        if (_columns.Shown is { } shown && line.Shown.Grams > 0)
            WriteShown(line, row, shown);
        Input(row, _columns.OnHand, 0, "#,##0");
        var pack = _sheet.Cell(row, _columns.Pack).SetText(line.Purchase?.Pack.Name ?? "");
        pack.AsEntry();
        pack.Style.Alignment.Indent = 1;
        double? holding = line.Purchase is { } purchase ? _mass.Of(purchase.Pack.Mass.Grams) : null;
        Input(row, _columns.Holds, holding, holding >= WholeFrom ? "#,##0" : FormatOf(holding ?? 0));
        Input(row, _columns.Price, (double?)line.Purchase?.Pack.Price.Amount, "#,##0.00");

        var (needed, holds, price) = (At(_columns.Needed, row), At(_columns.Holds, row), At(_columns.Price, row));
        Formula(row, _columns.PerKilogram, $"IF(AND(N({holds})>0,ISNUMBER({price})),{price}/{holds}*{_mass.InLarger},\"\")", "#,##0.00");
        // A hair less before rounding up, so that five packs are not six by the noise of binary fractions.
        Formula(
            row,
            _columns.Packs,
            $"IF(N({holds})>0,ROUNDUP(MAX(0,({needed}-{At(_columns.OnHand, row)})/{holds}-1E-9),0),\"\")",
            "#,##0"
        );
        Formula(row, _columns.ToPay, $"IF(AND(N({holds})>0,ISNUMBER({price})),{At(_columns.Packs, row)}*{price},\"\")", "#,##0.00");
        Formula(row, _columns.Used, $"IF(AND(N({holds})>0,ISNUMBER({price})),{needed}/{holds}*{price},\"\")", "#,##0.00");
        _sheet.Cell(row, _columns.Allergens).SetText(AllergyText.Of(line.Ingredient)).Style.Alignment.Indent = 1;
    }

    /// <summary>What is shown is shown once, however many teams there are; of a control every team gets a portion.</summary>
    private void WriteShown(RequisitionLine line, int row, int column)
    {
        var portions = _pack
            .Controls.SelectMany(control => control.Batch.Lines)
            .Where(weighed => weighed.Ingredient.Id == line.Ingredient.Id)
            .Sum(weighed => (decimal)weighed.Weighed.Grams);
        var once = (decimal)line.Shown.Grams - portions;
        if (portions == 0)
            Amount(row, column, _mass.Of(line.Shown.Grams));
        else
            Formula(
                row,
                column,
                FormattableString.Invariant(
                    $"{InFormula((double)portions)}*$B${Teams}/{_pack.Class.Teams}{(once == 0 ? "" : FormattableString.Invariant($"+{InFormula((double)once)}"))}"
                ),
                Grams
            );
    }

    private double InFormula(double grams) => CellNumber.Rounded(_mass.Of(grams), Decimals(_mass.Of(grams)));

    /// <summary>
    /// A fryer for each team that fries, but no more than there are. Where not every team does, their number stays as the pack has it.
    /// </summary>
    private string Filled(FryerFilling filling)
    {
        var makers = filling.Makers == _pack.Class.Teams ? $"$B${Teams}" : filling.Makers.ToString(CultureInfo.InvariantCulture);
        return FormattableString.Invariant(
            $"{InFormula(filling.Each.Grams)}*{(filling.Counted is { } counted ? FormattableString.Invariant($"MIN({Math.Max(1, counted)},{makers})") : makers)}"
        );
    }

    /// <summary>What fryers and demonstrations take joins what the teams do.</summary>
    private string Beside(int row) =>
        string.Concat(new[] { _columns.Fryers, _columns.Shown }.OfType<int>().Select(column => $"+N({At(column, row)})"));

    private void WriteSums()
    {
        var row = _last + 1;
        var sums = _sheet.Range(row, 1, row, _columns.Last);
        sums.Style.Font.Bold = true;
        sums.Style.Border.TopBorder = XLBorderStyleValues.Medium;
        sums.Style.Border.TopBorderColor = Palette.Crust;
        _sheet.Row(row).Height = 20;
        _sheet.Cell(row, 1).SetText("Together");
        foreach (var index in Enumerable.Range(0, _pack.Cards.Count))
            Formula(row, RequisitionColumns.Bread(index), $"SUM({Column(RequisitionColumns.Bread(index))})", Grams);
        Formula(row, _columns.Needed, $"SUM({Column(_columns.Needed)})", Grams);
        Formula(row, _columns.ToPay, $"SUM({Column(_columns.ToPay)})", "#,##0.00");
        Formula(row, _columns.Used, $"SUM({Column(_columns.Used)})", "#,##0.00");

        _sheet.Cell(row + 1, 1).SetText("For each student").AsQuiet();
        Formula(row + 1, _columns.ToPay, $"IF(N($B${Students})>0,{At(_columns.ToPay, row)}/$B${Students},\"\")", "#,##0.00");
        Formula(row + 1, _columns.Used, $"IF(N($B${Students})>0,{At(_columns.Used, row)}/$B${Students},\"\")", "#,##0.00");
        _sheet.Cell(row + 2, 1).SetText($"Ingredients of one piece{InCurrency}").AsQuiet();
        foreach (var (index, card) in _pack.Cards.Index())
        {
            Formula(row + 2, RequisitionColumns.Bread(index), PieceCost(index, card), "0.000");
        }
    }

    private string PieceCost(int index, FormulaCard card) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"(SUMPRODUCT({Column(RequisitionColumns.Bread(index))},{Column(_columns.PerKilogram)}){FryingCost(card)})/{_mass.InLarger}/{card.Pieces}"
        );

    /// <summary>A load's share of what fryers are filled with: all loads alike.</summary>
    private string FryingCost(FormulaCard card)
    {
        if (_columns.Fryers is not { } fryers || card.Bread.FryingFat is not { } fat)
            return "";
        var row = First + _pack.Requisition.Index().First(line => line.Item.Ingredient.Id == fat.Ingredient.Id).Index;
        var loads = string.Join(
            '+',
            _pack
                .Cards.Index()
                .Where(other => other.Item.Bread.FryingFat?.Ingredient.Id == fat.Ingredient.Id)
                .Select(other => $"{CellAddress.ColumnLetters(RequisitionColumns.Bread(other.Index))}${Loads}")
        );
        return $"+{At(fryers, row)}/MAX(1,{loads})*N({At(_columns.PerKilogram, row)})";
    }

    private string Unpriced() =>
        _pack.Cost is { Unpriced: { Count: > 0 } missing }
            ? $"Without a price, and so in none of the sums: {string.Join(", ", missing.Select(ingredient => ingredient.Name))}."
        : _pack.Cost is null ? "There is no price list for this class: write packs and prices into the framed cells."
        : "Sums are of whole packs; what is left stays in the store.";

    private void SetUpPrint()
    {
        _sheet.TabColor = Palette.Crust;
        _sheet.SetUpPage(
            _sheet.Range(1, 1, _last + 4, _columns.Last),
            XLPageOrientation.Landscape,
            _pack.Class.Paper,
            _pack.Class.Name,
            _pack.Lesson.Title
        );
        _sheet.PageSetup.SetRowsToRepeatAtTop(Head, Head);
        // What is needed on one page, what is bought for it on the next.
        var last = _sheet.SpreadOverPages(
            _pack.Class.Paper,
            _columns.Last,
            1,
            [.. Enumerable.Range(0, _pack.Cards.Count).Select(RequisitionColumns.Bread), _columns.Pack]
        );
        _sheet.Across(2, 2, last, $"{_pack.Class.Name}. {ProtectedSheet.Words}").AsQuiet();
        _sheet.Across(_last + 4, 2, last, Unpriced()).AsQuiet();
        _sheet.ProtectFromSlips();
    }

    private void Amount(int row, int column, double value) =>
        _sheet.Cell(row, column).SetRounded(value, Decimals(value)).Style.NumberFormat.Format = FormatOf(value);

    /// <summary>As many decimals as the value has, as far as they mean something: of 0.## a spreadsheet program makes "6.".</summary>
    private static string FormatOf(double value)
    {
        var decimals = Decimals(value);
        return decimals == 0 ? "#,##0" : "#,##0." + new string('0', decimals);
    }

    /// <summary>Two at most, three of what is less than one: half an ounce of yeast is no place to lose a hundredth.</summary>
    private static int Decimals(double value)
    {
        var decimals = Math.Abs(value) < 1 ? 3 : 2;
        var shown = CellNumber.Rounded(value, decimals);
        while (decimals > 0 && CellNumber.Rounded(value, decimals - 1) == shown)
            decimals--;
        return decimals;
    }

    private void Formula(int row, int column, string formula, string format) =>
        _sheet.Cell(row, column).SetFormulaA1(formula).Style.NumberFormat.Format = format;

    private void Input(int row, int column, double? value, string format)
    {
        var cell = _sheet.Cell(row, column);
        if (value is { } number)
            cell.SetRounded(number, Decimals(number));
        cell.AsEntry();
        cell.Style.NumberFormat.Format = format;
    }

    private string Column(int column) => $"{At(column, First)}:{At(column, _last)}";

    private static string At(int column, int row) => CellAddress.ColumnLetters(column) + row.ToString(CultureInfo.InvariantCulture);
}
