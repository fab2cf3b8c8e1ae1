using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Sensory;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Sensory;

/// <summary>What every seat wrote for every sample, and above it what the class found.</summary>
internal static class RatingsSheet
{
    private const int FirstDescriptor = 3;

    public static void Write(IXLWorksheet sheet, LessonPack pack, Tasting tasting)
    {
        var asked = Descriptor.For(pack.Lesson.Formulas);
        var last = FirstDescriptor - 1 + asked.Count;
        sheet.AsPage();
        sheet.Range(1, 1, 1, last).AsTitle();
        sheet.Cell(1, 1).SetText(" Scales");
        sheet.Cell(1, FirstDescriptor).SetText(pack.Lesson.Title);
        sheet.Column(1).Width = 24;
        sheet.Column(2).Width = 10;
        for (var column = FirstDescriptor; column <= last; column++)
            sheet.Column(column).Width = 13;

        var seats = Math.Max(1, tasting.Servings.Count);
        var (found, typed) = (4, 4 + 2 * tasting.Breads.Count + 3);
        Heads(found, "Bread", "");
        Heads(typed - 1, "Bread", "Seat");
        var entry = sheet.Cell(typed, FirstDescriptor);
        entry.AsEntry();
        foreach (var (index, bread) in tasting.Breads.Index())
        {
            var (from, to) = (typed + index * seats, typed + (index + 1) * seats - 1);
            var name = $"{bread.Bread.Formula.Title} ({bread.Code.ToString(CultureInfo.InvariantCulture)})";
            Found(found + 1 + 2 * index, name, "mean", "AVERAGE", 1, from, to);
            Found(found + 2 + 2 * index, "", "spread", "STDEV", 2, from, to);
            for (var row = from; row <= to; row++)
            {
                // On every row: a list that is filtered or printed on several pages says of each row whose it is.
                var whose = sheet.Cell(row, 1).SetText(name);
                if (row > from)
                    whose.AsQuiet();
                sheet.Cell(row, 2).SetValue(row - from + 1);
                for (var column = FirstDescriptor; column <= last; column++)
                    sheet.Cell(row, column).Style = entry.Style;
            }
        }
        sheet
            .Range(typed, FirstDescriptor, typed + tasting.Breads.Count * seats - 1, last)
            .SetDataValidation()
            .WholeNumber.Between(Descriptor.Least, Descriptor.Most);
        sheet.TabColor = Palette.Crust;
        sheet.SetUpPage(
            sheet.Range(1, 1, typed + tasting.Breads.Count * seats - 1, last),
            XLPageOrientation.Landscape,
            pack.Class.Paper,
            pack.Class.Name,
            pack.Lesson.Title
        );
        sheet.PageSetup.SetRowsToRepeatAtTop(typed - 1, typed - 1);
        var lastOfFirst = sheet.SpreadOverPages(pack.Class.Paper, last, 2);
        sheet
            .Across(
                2,
                FirstDescriptor,
                lastOfFirst,
                $"Type the numbers of the sheets, {Descriptor.Least} to {Descriptor.Most}, into the framed cells below; means and spreads follow. Leave empty what nobody wrote."
            )
            .AsQuiet();
        sheet.ProtectFromSlips();

        void Heads(int row, string first, string second)
        {
            foreach (var (index, head) in new[] { first, second }.Concat(asked.Select(descriptor => descriptor.Name)).Index())
                sheet.Cell(row, index + 1).SetText(head).Wrapped();
            sheet.Range(row, 1, row, last).AsTableHead();
            sheet.Row(row).Height = 46;
        }

        void Found(int row, string name, string what, string function, int least, int from, int to)
        {
            sheet.Cell(row, 1).SetText(name);
            sheet.Cell(row, 2).SetText(what).AsQuiet();
            for (var column = FirstDescriptor; column <= last; column++)
            {
                var letter = CellAddress.ColumnLetters(column);
                var cells = FormattableString.Invariant($"{letter}{from}:{letter}{to}");
                sheet
                    .Cell(row, column)
                    .SetFormulaA1(FormattableString.Invariant($"IF(COUNT({cells})<{least},\"\",{function}({cells}))"))
                    .Style.NumberFormat.Format = "0.0";
            }
            sheet.Range(row, 1, row, last).AsTableRow();
        }
    }
}
