using System.Globalization;

namespace ClassKit.UseCases.Exporting;

/// <summary>How the tables of 1EdTech OneRoster 1.2 begin, and how they write days and truth.</summary>
internal static class OneRosterColumns
{
    /// <summary>What every table begins with. In a bulk exchange the last two stay empty.</summary>
    public static readonly string[] Common = ["sourcedId", "status", "dateLastModified"];

    public static string Of(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Of(bool value) => value ? "true" : "false";
}
