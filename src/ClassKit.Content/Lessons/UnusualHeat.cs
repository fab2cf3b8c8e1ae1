using System.Text.RegularExpressions;
using ClassKit.Baking.Cooking;
using ClassKit.Baking.Household;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Notes heats that no kitchen has, or that most likely were meant in the other scale: 410 °C for 410 °F, fat at 280 °C, a proof at 52 °C.
/// </summary>
internal static partial class UnusualHeat
{
    /// <summary>In °C. From memory: household and deck ovens end at 250 to 320.</summary>
    private const double HottestOven = 330;

    /// <summary>In °C. Common practice, no source: an oven dries and keeps warm from here on, and bakes from far above it.</summary>
    private const double CoolestOven = 60;

    /// <summary>
    /// In °C. Common practice, no source: below, food soaks up fat before it is done; above, fat begins to smoke, and its heat is turned
    /// off.
    /// </summary>
    private const double CoolestFat = 140,
        HottestFat = 200;

    /// <summary>In °C. From memory: a heavy pan or a griddle is at its hottest on a household's burner.</summary>
    private const double HottestPan = 330;

    /// <summary>In °C. From memory: baker's yeast slows down from 40 on and dies between 50 and 60.</summary>
    private const double WarmestRise = 45;

    public static void Note(MethodStep step, int line, ProblemList problems)
    {
        if (step.Temperature is not { } heat)
            return;
        var (celsius, written) = (heat.Celsius, TemperatureNotation.AsWritten(heat));
        if (step.InOven && celsius > HottestOven)
            problems.Doubt(
                line,
                $"The oven of `{step.Name}` is at {written}, hotter than most ovens get",
                $"If it was meant so, write `oven {celsius:0} °F`. Leave it if your oven gets that hot."
            );
        else if (step.InOven && celsius < CoolestOven)
            problems.Doubt(
                line,
                $"The oven of `{step.Name}` is at {written}, and nothing bakes below some {CoolestOven} °C (140 °F)",
                "Is a digit missing, as in `oven 190 °C` or `oven 375 °F`, or was the other scale meant?"
            );
        else if (step.Way == CookingWay.Fryer && celsius is < CoolestFat or > HottestFat)
            problems.Doubt(
                line,
                $"The fat of `{step.Name}` is at {written}, and food is fried at {CoolestFat} to {HottestFat} °C",
                celsius > HottestFat
                    ? "Above that fat smokes and can catch fire. Did you mean °F, or another number?"
                    : "Below that food soaks up fat before it is done. Did you mean another number?"
            );
        else if (step.Way is CookingWay.Pan or CookingWay.Griddle && celsius > HottestPan)
            problems.Doubt(
                line,
                $"`{step.Name}` is at {written}, hotter than most pans and griddles get",
                $"If it was meant so, write `{celsius:0} °F`."
            );
        else if (!step.IsCooking && step.Work.People == 0 && celsius > WarmestRise && Rises().IsMatch(step.Name))
            problems.Doubt(
                line,
                $"`{step.Name}` is at {written}, and yeast begins to die above some {WarmestRise} °C",
                "Doughs rise at 24 to 38 °C. Did you mean another number?"
            );
    }

    [GeneratedRegex(@"\b(proof|proves?|proving|rise|rising|ferment|bulk)", RegexOptions.IgnoreCase)]
    private static partial Regex Rises();
}
