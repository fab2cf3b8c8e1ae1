using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Dates and times as day numbers (OpenFormula 1.3, 6.10; ECMA-376 Part 1, 18.17.4 for the two date systems).</summary>
internal static class Dates
{
    private const double SecondsPerDay = 86400;

    public static readonly FunctionRow[] Rows =
    [
        new("DATE", 3, 3, "VVV", Date),
        new("TIME", 3, 3, "VVV", Time),
        new("YEAR", 1, 1, "V", call => Of(call, (year, _, _) => year)),
        new("MONTH", 1, 1, "V", call => Of(call, (_, month, _) => month)),
        new("DAY", 1, 1, "V", call => Of(call, (_, _, day) => day)),
        new("HOUR", 1, 1, "V", call => OfTime(call, seconds => Math.Floor(seconds / 3600))),
        new("MINUTE", 1, 1, "V", call => OfTime(call, seconds => Math.Floor(seconds / 60) % 60)),
        new("SECOND", 1, 1, "V", call => OfTime(call, seconds => seconds % 60)),
        new("DAYS", 2, 2, "VV", call => Numbers.Floor(call.Number(0)) - Numbers.Floor(call.Number(1))),
        new("DAYS360", 2, 3, "VVV", Days360),
        new("EDATE", 2, 2, "VV", call => Months(call, toEnd: false)),
        new("EOMONTH", 2, 2, "VV", call => Months(call, toEnd: true)),
        new("WEEKDAY", 1, 2, "VV", Weekday),
        new("WEEKNUM", 1, 2, "VV", WeekNumber),
        new("ISOWEEKNUM", 1, 1, "V", call => IsoWeek(call, call.Number(0))),
        new("DATEVALUE", 1, 1, "V", DateValue),
        new("TIMEVALUE", 1, 1, "V", TimeValue),
    ];

    /// <summary>Months past 12 and days past the month's end run over into the next year and month.</summary>
    private static FormulaValue Date(Call call)
    {
        var (year, month, day) = (Numbers.Truncate(call.Number(0)), Numbers.Truncate(call.Number(1)), Numbers.Truncate(call.Number(2)));
        if (call.Failed)
            return call.Failure;
        if (year >= 0 && year < (call.Run.Dates == DateSystem.From1899 ? 100 : 1900))
            year += 1900;
        if (Math.Abs(month) > 120_000 || Math.Abs(day) > 4_000_000)
            return CellError.Number;
        return FirstOfMonth(call, year, month) is { } first && first + day - 1 is var serial && InRange(call, serial)
            ? serial
            : CellError.Number;
    }

    private static double? FirstOfMonth(Call call, double year, double month)
    {
        var months = year * 12 + month - 1;
        var wholeYear = Math.Floor(months / 12);
        if (wholeYear is < 1 or > 10_000)
            return null;
        return wholeYear == 10_000 ? Serial.End : Serial.Of(new((int)wholeYear, (int)(months - wholeYear * 12) + 1, 1), call.Run.Dates);
    }

    private static bool InRange(Call call, double serial) => Serial.TryDate(serial, call.Run.Dates, out _, out _, out _);

    private static FormulaValue Time(Call call)
    {
        var (hours, minutes, seconds) = (
            Numbers.Truncate(call.Number(0)),
            Numbers.Truncate(call.Number(1)),
            Numbers.Truncate(call.Number(2))
        );
        if (hours > 32767 || minutes > 32767 || seconds > 32767)
            return CellError.Number;
        var total = hours * 3600 + minutes * 60 + seconds;
        return total < 0 ? CellError.Number : total % SecondsPerDay / SecondsPerDay;
    }

    private static FormulaValue Of(Call call, Func<int, int, int, int> part) =>
        Serial.TryDate(call.Number(0), call.Run.Dates, out var year, out var month, out var day)
            ? part(year, month, day)
            : CellError.Number;

    /// <summary>Whole seconds of the day, so that 59.9996 seconds do not show as 59.</summary>
    private static FormulaValue OfTime(Call call, Func<double, double> part)
    {
        var serial = call.Number(0);
        if (!InRange(call, serial))
            return CellError.Number;
        return part(Math.Floor((serial - Math.Floor(serial)) * SecondsPerDay + 0.5) % SecondsPerDay);
    }

    private static FormulaValue Months(Call call, bool toEnd)
    {
        var (serial, months) = (call.Number(0), Numbers.Truncate(call.Number(1)));
        if (Math.Abs(months) > 120_000 || !Serial.TryDate(serial, call.Run.Dates, out var year, out var month, out var day))
            return CellError.Number;
        if (FirstOfMonth(call, year, month + months) is not { } first || FirstOfMonth(call, year, month + months + 1) is not { } next)
            return CellError.Number;
        var result = toEnd ? next - 1 : Math.Min(first + day - 1, next - 1);
        return InRange(call, result) ? result : CellError.Number;
    }

    private static FormulaValue Weekday(Call call)
    {
        var (serial, type) = (call.Number(0), call.IsAbsent(1) ? 1 : call.Integer(1));
        if (call.Failed)
            return call.Failure;
        if (!InRange(call, serial))
            return CellError.Number;
        var day = Serial.Weekday(serial, call.Run.Dates);
        return type switch
        {
            1 => day + 1,
            2 => (day + 6) % 7 + 1,
            3 => (day + 6) % 7,
            >= 11 and <= 17 => (day - (type - 10) + 7) % 7 + 1,
            _ => CellError.Number,
        };
    }

    /// <summary>Weeks counted from 1 January on; with type 21 as ISO 8601 has them.</summary>
    private static FormulaValue WeekNumber(Call call)
    {
        var (serial, type) = (call.Number(0), call.Integer(1, 1));
        if (call.Failed)
            return call.Failure;
        if (type == 21)
            return IsoWeek(call, serial);
        int? firstDay = type switch
        {
            1 or 17 => 0,
            2 or 11 => 1,
            >= 12 and <= 16 => type - 10,
            _ => null,
        };
        if (firstDay is not { } first || !Serial.TryDate(serial, call.Run.Dates, out var year, out _, out _))
            return CellError.Number;
        var newYear = FirstOfMonth(call, year, 1)!.Value;
        var offset = (Serial.Weekday(newYear, call.Run.Dates) - first + 7) % 7;
        return Math.Floor((Math.Floor(serial) - newYear + offset) / 7) + 1;
    }

    /// <summary>The week whose Thursday falls into the year (ISO 8601).</summary>
    private static FormulaValue IsoWeek(Call call, double serial)
    {
        if (!InRange(call, serial))
            return CellError.Number;
        var thursday = Math.Floor(serial) - (Serial.Weekday(serial, call.Run.Dates) + 6) % 7 + 3;
        if (!Serial.TryDate(thursday, call.Run.Dates, out var year, out _, out _))
            return CellError.Number;
        return Math.Floor((thursday - FirstOfMonth(call, year, 1)!.Value) / 7) + 1;
    }

    private static FormulaValue DateValue(Call call)
    {
        var text = call.Text(0);
        if (call.Failed)
            return call.Failure;
        if (!DateText.TryParse(text.AsSpan().Trim(), out var serial) || serial < 1)
            return CellError.Value;
        return Serial.InSystem(Math.Floor(serial), call.Run.Dates);
    }

    private static FormulaValue TimeValue(Call call)
    {
        var text = call.Text(0);
        if (call.Failed)
            return call.Failure;
        return DateText.TryParse(text.AsSpan().Trim(), out var serial) ? serial - Math.Floor(serial) : CellError.Value;
    }

    /// <summary>Days between dates in a year of twelve months of 30 days, the US way unless the European one is asked for.</summary>
    private static FormulaValue Days360(Call call)
    {
        var system = call.Run.Dates;
        var (start, end, european) = (call.Number(0), call.Number(1), call.Logical(2, false));
        if (
            !Serial.TryDate(start, system, out var y1, out var m1, out var d1)
            || !Serial.TryDate(end, system, out var y2, out var m2, out var d2)
        )
            return CellError.Number;
        if (european)
        {
            (d1, d2) = (Math.Min(d1, 30), Math.Min(d2, 30));
        }
        else
        {
            if (Serial.TryDate(start + 1, system, out _, out var next, out _) && next != m1)
                d1 = 30;
            if (d2 == 31 && d1 == 30)
                d2 = 30;
        }

        return (y2 - y1) * 360 + (m2 - m1) * 30 + (d2 - d1);
    }
}
