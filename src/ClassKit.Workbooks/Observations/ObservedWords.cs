using ClassKit.Lessons.Authored;

namespace ClassKit.Workbooks.Observations;

/// <summary>What stands before measurements in the workbook of observations, where they are found again.</summary>
internal static class ObservedWords
{
    public const string Sheet = "Observations";
    public const string Team = "Team";
    public const string Form = "Form";

    public static string Of(Measure measure, bool isOvenBread) =>
        measure switch
        {
            Measure.BakeLoss when !isOvenBread => "Loss in cooking",
            Measure.InternalTemperature when !isOvenBread => "Middle, just cooked",
            Measure.MassBefore => "Mass before",
            Measure.MassAfter => "Mass after",
            Measure.BakeLoss => "Bake loss",
            Measure.Height => "Height",
            Measure.Diameter => "Width at its widest",
            Measure.InternalTemperature => "Middle, out of the oven",
            Measure.GuessedHeight => "My guess of the height",
            Measure.MixedTemperature => "Batter or dough, mixed",
        };
}
