namespace ClassKit.CellFormulas.Values;

/// <summary>Dates as day numbers, in the systems that files use.</summary>
/// <remarks>
/// Source: ECMA-376 Part 1, 18.17.4.1. In the 1900 system day 1 is 1900-01-01 and day 60 the 29 February 1900 that never was;
/// the 1904 system starts with day 0 at 1904-01-01. OpenFormula 1.3, 4.3.3: dates are numbers of days from a day that the file names,
/// 1899-12-30 where it names none.
/// </remarks>
internal static class Serial
{
    private const int FalseLeapDay = 60;

    // Day 0 of the 1900 system as dates after February 1900 see it.
    private static readonly DateTime Epoch1900 = new(1899, 12, 30);
    private static readonly DateTime Epoch1904 = new(1904, 1, 1);

    /// <summary>The day after the last one that a cell can show, 9999-12-31, in the 1900 system.</summary>
    public const double End = 2_958_466;

    /// <summary>How much larger a day number is in the 1900 system than in the 1904 system.</summary>
    public const double SystemsApart = 1462;

    // The first day that a calendar of these programs knows, 0001-01-01, from 1899-12-30.
    private const double Beginning = -693_593;

    /// <summary>The day number of a date; years before the system's first give a negative one.</summary>
    public static double Of(DateTime date, DateSystem system)
    {
        if (system == DateSystem.From1904)
            return (date - Epoch1904).TotalDays;
        var days = (date - Epoch1900).TotalDays;
        return system == DateSystem.From1900 && days <= FalseLeapDay ? days - 1 : days;
    }

    /// <summary>The day number of a date that has a given one in the 1900 system.</summary>
    public static double InSystem(double serial, DateSystem system) =>
        system switch
        {
            DateSystem.From1904 => serial - SystemsApart,
            DateSystem.From1899 when serial < FalseLeapDay => serial + 1,
            _ => serial,
        };

    /// <summary>Year, month and day of a day number; false outside what a cell can show.</summary>
    public static bool TryDate(double serial, DateSystem system, out int year, out int month, out int day)
    {
        (year, month, day) = (0, 0, 0);
        var whole = Math.Floor(serial);
        if (whole < (system == DateSystem.From1899 ? Beginning : 0) || whole >= (system == DateSystem.From1904 ? End - SystemsApart : End))
            return false;
        if (system == DateSystem.From1900 && whole is 0 or FalseLeapDay)
        {
            (year, month, day) = whole == 0 ? (1900, 1, 0) : (1900, 2, 29);
            return true;
        }

        var date = system switch
        {
            DateSystem.From1904 => Epoch1904.AddDays(whole),
            DateSystem.From1900 when whole < FalseLeapDay => Epoch1900.AddDays(whole + 1),
            _ => Epoch1900.AddDays(whole),
        };
        (year, month, day) = (date.Year, date.Month, date.Day);
        return true;
    }

    /// <summary>
    /// 0 for Sunday to 6 for Saturday, as programs have it: in the 1900 system the days before March 1900 carry the wrong names.
    /// </summary>
    public static int Weekday(double serial, DateSystem system)
    {
        var day = (int)((Math.Floor(serial) + (system == DateSystem.From1904 ? 5 : 6)) % 7);
        return day < 0 ? day + 7 : day;
    }
}
