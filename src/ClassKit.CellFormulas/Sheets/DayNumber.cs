using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Sheets;

/// <summary>Dates as the numbers that cells hold.</summary>
public static class DayNumber
{
    /// <summary>The number of a date and time; days before the system's first are negative.</summary>
    public static double Of(DateTime date, DateSystem system) => Serial.Of(date, system);
}
