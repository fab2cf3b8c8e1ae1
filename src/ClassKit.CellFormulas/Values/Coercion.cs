using ClassKit.CellFormulas.Budget;

namespace ClassKit.CellFormulas.Values;

/// <summary>The one place where a value of one kind becomes another because something wants it so.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.17.2.6 (types and conversions); OpenFormula 1.3, 6.3.</remarks>
internal static class Coercion
{
    /// <summary>
    /// A number: blank is 0, TRUE is 1, a text is read as if typed into a cell, else <c>#VALUE!</c>; an error stays that error.
    /// </summary>
    public static bool TryNumber(
        CellValue value,
        Meter meter,
        out double number,
        out CellError error,
        DateSystem dates = DateSystem.From1900
    )
    {
        error = default;
        switch (value.Kind)
        {
            case CellValueKind.Number:
                number = value.Number;
                return true;
            case CellValueKind.Blank:
                number = 0;
                return true;
            case CellValueKind.Logical:
                number = value.Logical ? 1 : 0;
                return true;
            case CellValueKind.Text:
                if (NumberText.TryParse(value.Text, meter, out number))
                {
                    if (dates != DateSystem.From1900 && DateText.HasDate(value.Text))
                        number = Serial.InSystem(number, dates);
                    return true;
                }

                error = CellError.Value;
                return false;
            default:
                number = 0;
                error = value.Error;
                return false;
        }
    }

    /// <summary>A text: blank is the empty one, a number is written as a cell without a format shows it.</summary>
    public static bool TryText(CellValue value, Meter meter, out string text, out CellError error)
    {
        error = default;
        switch (value.Kind)
        {
            case CellValueKind.Text:
                text = value.Text;
                return true;
            case CellValueKind.Number:
                meter.Spend(1);
                text = NumberText.General(value.Number);
                return true;
            case CellValueKind.Blank:
                text = "";
                return true;
            case CellValueKind.Logical:
                text = value.Logical ? "TRUE" : "FALSE";
                return true;
            default:
                text = "";
                error = value.Error;
                return false;
        }
    }

    /// <summary>A logical: 0 and blank are FALSE, other numbers TRUE; of texts only TRUE and FALSE will do.</summary>
    public static bool TryLogical(CellValue value, out bool logical, out CellError error)
    {
        error = default;
        logical = false;
        switch (value.Kind)
        {
            case CellValueKind.Logical:
                logical = value.Logical;
                return true;
            case CellValueKind.Number:
                logical = value.Number != 0;
                return true;
            case CellValueKind.Blank:
                return true;
            case CellValueKind.Text:
                if (bool.TryParse(value.Text, out logical))
                    return true;
                error = CellError.Value;
                return false;
            default:
                error = value.Error;
                return false;
        }
    }
}
