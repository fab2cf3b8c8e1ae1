using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>
/// How far two dates lie apart, in years, months and days (OpenFormula 1.3, 6.10 DATEDIF and YEARFRAC, 4.11.7 for the bases).
/// </summary>
internal static class Intervals
{
    public static readonly FunctionRow[] Rows = [new("DATEDIF", 3, 3, "VVV", Between), new("YEARFRAC", 2, 3, "VVV", YearFraction)];

    /// <summary>Whole years, months or days; with YM, MD and YD what is left over after the larger unit.</summary>
    private static FormulaValue Between(Call call)
    {
        if (CalendarDay.Of(call, 0) is not { } start || CalendarDay.Of(call, 1) is not { } end)
            return CellError.Number;
        var unit = call.Text(2).ToUpperInvariant();
        if (call.Failed)
            return call.Failure;
        if (start.Serial > end.Serial)
            return CellError.Number;
        var months = (end.Year - start.Year) * 12 + end.Month - start.Month - (end.Day < start.Day ? 1 : 0);
        return unit switch
        {
            "Y" => Math.Floor(months / 12.0),
            "M" => months,
            "D" => end.Serial - start.Serial,
            "YM" => months % 12,
            "MD" => end.Day >= start.Day ? end.Day - start.Day : end.Day - start.Day + DaysInMonthBefore(end),
            "YD" => DaysIgnoringYears(start, end),
            _ => CellError.Number,
        };
    }

    private static double DaysInMonthBefore(CalendarDay day) => day.Month == 1 ? 31 : DateTime.DaysInMonth(day.Year, day.Month - 1);

    /// <summary>As if the end lay in the year of the start, or in the next.</summary>
    private static double DaysIgnoringYears(CalendarDay start, CalendarDay end)
    {
        var wraps = (end.Month, end.Day).CompareTo((start.Month, start.Day)) < 0;
        var year = start.Year + (wraps ? 1 : 0);
        return (
            new DateTime(year, end.Month, 1).AddDays(end.Day - 1) - new DateTime(start.Year, start.Month, 1).AddDays(start.Day - 1)
        ).TotalDays;
    }

    /// <summary>
    /// Basis 0 for twelve months of 30 days the US way, 1 for true days and years, 2 and 3 for true days in years of 360 and 365, 4 for 30
    /// days the European way.
    /// </summary>
    private static FormulaValue YearFraction(Call call)
    {
        var (first, second, basis) = (CalendarDay.Of(call, 0), CalendarDay.Of(call, 1), call.Integer(2, 0));
        if (call.Failed)
            return call.Failure;
        if (first is not { } start || second is not { } end || basis is < 0 or > 4)
            return CellError.Number;
        if (start.Serial > end.Serial)
            (start, end) = (end, start);
        var days = end.Serial - start.Serial;
        return basis switch
        {
            0 => MonthsOf30Us(start, end) / 360,
            1 => days / YearLength(start, end),
            2 => days / 360,
            3 => days / 365,
            _ => MonthsOf30(start, end, Math.Min(start.Day, 30), Math.Min(end.Day, 30)) / 360,
        };
    }

    private static double MonthsOf30(CalendarDay start, CalendarDay end, int firstDay, int lastDay) =>
        (end.Year - start.Year) * 360.0 + (end.Month - start.Month) * 30 + lastDay - firstDay;

    private static double MonthsOf30Us(CalendarDay start, CalendarDay end)
    {
        var (first, last) = (start.Day, end.Day);
        if (start.EndsFebruary && end.EndsFebruary)
            last = 30;
        if (start.EndsFebruary)
            first = 30;
        if (last == 31 && first >= 30)
            last = 30;
        return MonthsOf30(start, end, Math.Min(first, 30), last);
    }

    /// <summary>The length of the year that the days are a part of: within one year that year's, over several their mean.</summary>
    private static double YearLength(CalendarDay start, CalendarDay end)
    {
        if (start.Year == end.Year)
            return DateTime.IsLeapYear(start.Year) ? 366 : 365;
        var withinOne = end.Year == start.Year + 1 && (end.Month, end.Day).CompareTo((start.Month, start.Day)) <= 0;
        if (!withinOne)
            return (new DateTime(end.Year, 12, 31) - new DateTime(start.Year, 1, 1)).TotalDays is var days
                ? (days + 1) / (end.Year - start.Year + 1)
                : 0;
        var holdsLeapDay =
            (DateTime.IsLeapYear(start.Year) && start.Month <= 2)
            || (DateTime.IsLeapYear(end.Year) && (end.Month, end.Day).CompareTo((2, 29)) >= 0);
        return holdsLeapDay ? 366 : 365;
    }
}
