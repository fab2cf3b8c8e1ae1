using ClassKit.CellFormulas.Calls;

namespace ClassKit.CellFormulas.Functions;

/// <summary>A day number taken apart.</summary>
/// <param name="Serial">The day number, whole.</param>
/// <param name="Year">The year.</param>
/// <param name="Month">1 to 12.</param>
/// <param name="Day">The day of the month.</param>
internal readonly record struct CalendarDay(double Serial, int Year, int Month, int Day)
{
    public bool EndsFebruary => Month == 2 && Day >= DateTime.DaysInMonth(Year, 2);

    /// <summary>An argument as a day; null if it is none.</summary>
    public static CalendarDay? Of(Call call, int at)
    {
        var serial = Math.Floor(call.Number(at));
        if (call.Failed || !Values.Serial.TryDate(serial, call.Run.Dates, out var year, out var month, out var day))
            return null;
        return new(serial, year, month, day);
    }
}
