using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Days without weekends and holidays (OpenFormula 1.3, 6.10 NETWORKDAYS and WORKDAY).</summary>
internal static class Workdays
{
    private const string SaturdayAndSunday = "0000011";
    private const int TicksPerDay = 8;

    public static readonly FunctionRow[] Rows =
    [
        new("NETWORKDAYS", 2, 3, "VVR", call => Count(call, SaturdayAndSunday, 2)),
        new("NETWORKDAYS.INTL", 2, 4, "VVVR", call => Weekend(call, 2) is { } weekend ? Count(call, weekend, 3) : false),
        new("WORKDAY", 2, 3, "VVR", call => Move(call, SaturdayAndSunday, 2)),
        new("WORKDAY.INTL", 2, 4, "VVVR", call => Weekend(call, 2) is { } weekend ? Move(call, weekend, 3) : false),
    ];

    /// <summary>Seven signs from Monday on, 1 for a day off; a number names one of fourteen usual weekends.</summary>
    private static string? Weekend(Call call, int at)
    {
        if (call.IsMissing(at))
            return SaturdayAndSunday;
        var value = call.Scalar(at);
        if (call.Failed)
            return null;
        if (value.IsText)
        {
            if (value.Text.Length == 7 && value.Text.All(sign => sign is '0' or '1'))
                return value.Text;
            call.Fail(CellError.Value);
            return null;
        }

        // 1 is Saturday and Sunday, 2 Sunday and Monday, and so on; 11 is Sunday alone, 12 Monday alone, and so on.
        var number = call.Integer(at);
        if (number is >= 1 and <= 7)
            return Off((number + 4) % 7, (number + 5) % 7);
        if (number is >= 11 and <= 17)
            return Off((number - 5) % 7, (number - 5) % 7);
        call.Fail(CellError.Number);
        return null;
    }

    private static string Off(int first, int second) => string.Create(7, (first, second), static (signs, days) =>
        {
            signs.Fill('0');
            signs[days.first] = '1';
            signs[days.second] = '1';
        });

    /// <summary>Both ends included; negative if the second lies before the first.</summary>
    private static FormulaValue Count(Call call, string weekend, int holidaysAt)
    {
        var (first, last) = (Math.Floor(call.Number(0)), Math.Floor(call.Number(1)));
        var holidays = Holidays(call, holidaysAt);
        if (call.Failed)
            return call.Failure;
        if (!InRange(call, first) || !InRange(call, last))
            return CellError.Number;
        var (from, to) = (Math.Min(first, last), Math.Max(first, last));
        var weeks = Math.Floor((to - from + 1) / 7);
        var count = weeks * weekend.Count(sign => sign == '0');
        for (var day = from + weeks * 7; day <= to; day++)
        {
            if (IsWorkday(call, day, weekend))
                count++;
        }

        call.Meter.Spend(holidays.Count / 2);
        count -= holidays.Count(day => day >= from && day <= to && IsWorkday(call, day, weekend));
        return first <= last ? count : -count;
    }

    private static FormulaValue Move(Call call, string weekend, int holidaysAt)
    {
        var day = Math.Floor(call.Number(0));
        var left = Numbers.Truncate(call.Number(1));
        var holidays = Holidays(call, holidaysAt);
        if (call.Failed)
            return call.Failure;
        if (!InRange(call, day))
            return CellError.Number;
        if (!weekend.Contains('0', StringComparison.Ordinal))
            return CellError.Value;
        var step = Math.Sign(left);
        if (Math.Abs(left) > Serial.End)
            return CellError.Number;
        while (left != 0)
        {
            call.Meter.Take(TicksPerDay);
            day += step;
            if (!InRange(call, day))
                return CellError.Number;
            if (IsWorkday(call, day, weekend) && !holidays.Contains(day))
                left -= step;
        }

        return day;
    }

    private static bool IsWorkday(Call call, double day, string weekend) => weekend[(Serial.Weekday(day, call.Run.Dates) + 6) % 7] == '0';

    private static HashSet<double> Holidays(Call call, int at) => call.IsMissing(at) ? [] : call.Derived(at, () =>
            {
                var days = new HashSet<double>();
                foreach (var cell in call.Filled(at))
                {
                    call.Meter.Spend(1);
                    if (Coercion.TryNumber(cell, call.Meter, out var day, out var error))
                        days.Add(Math.Floor(day));
                    else
                        call.Fail(error);
                }

                return days;
            });

    private static bool InRange(Call call, double day) => Serial.TryDate(day, call.Run.Dates, out _, out _, out _);
}
