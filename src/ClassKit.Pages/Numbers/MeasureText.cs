using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Observations;
using ClassKit.Lessons.Packs;
using ClassKit.Wording.Counts;

namespace ClassKit.Pages.Numbers;

/// <summary>Measures and their predictions in words.</summary>
public static class MeasureText
{
    private static readonly string[] Numbers = ["no", "one", "two", "three"];

    /// <summary>Behind a forecast in which walls stretch as far as at sea level, since nobody can say what thin air does to them.</summary>
    public const string AsAtSeaLevel = ", walls as at sea level";

    /// <summary>Why they are taken to.</summary>
    public const string WhyAsAtSeaLevel =
        "Walls as at sea level: where they and not the gas end the rise, no published figure says how much further they stretch, or how much sooner they tear, in thin air. Taller or fallen is what your kitchen finds out.";

    /// <summary>What is measured.</summary>
    public static string Of(Measure measure) =>
        measure switch
        {
            Measure.MassBefore => "Mass before",
            Measure.MassAfter => "Mass after",
            Measure.BakeLoss => "Bake loss",
            Measure.Height => "Height",
            Measure.Diameter => "Width at its widest",
            Measure.InternalTemperature => "Middle, out of the oven",
            Measure.GuessedHeight => "Guess of the height",
            Measure.MixedTemperature => "Batter or dough, mixed",
        };

    /// <summary>"measure three pieces of each": no more than are made.</summary>
    /// <param name="made">How many pieces a team makes of each bread.</param>
    public static string HowMany(IReadOnlyList<int> made)
    {
        ArgumentNullException.ThrowIfNull(made);
        List<int> measured = [.. made.Select(ObservationForm.MeasuredOf).Distinct()];
        return measured.Count > 1
            ? $"measure up to {Numbers[measured.Max()]} pieces of each"
            : $"measure {Numbers[measured[0]]} {Counted.Noun(measured[0], "piece")} of each";
    }

    /// <summary>What is measured of a bread: one that no oven bakes has no bake loss.</summary>
    public static string Of(Measure measure, LessonFormula bread) =>
        (measure, bread.IsOvenBread) switch
        {
            (Measure.BakeLoss, false) => "Loss in cooking",
            (Measure.InternalTemperature, false) => "Middle, just cooked",
            _ => Of(measure),
        };

    /// <summary>
    /// What a bread is expected to come to: its range, that nobody can say, or a dash where its cup or tin is not written down.
    /// </summary>
    public static string Expected(Measure measure, LeaveningComparison compared, Temperature boilingPoint, UnitSystem units) =>
        Prediction.Of(measure, compared, boilingPoint) is { } prediction ? Of(prediction, units)
        : Prediction.IsBeyondUs(measure, compared) ? CookingText.NotPredicted
        : "–";

    /// <summary>The same for a kitchen that is high, of which sea level may be all that is known.</summary>
    /// <param name="measure">What.</param>
    /// <param name="here">The bread in this kitchen.</param>
    /// <param name="seaLevel">The same at sea level; null for a kitchen that is not high.</param>
    /// <param name="boilingPoint">Of water in this kitchen.</param>
    /// <param name="units">The units that the class uses.</param>
    public static string ExpectedHere(
        Measure measure,
        LeaveningComparison here,
        LeaveningComparison? seaLevel,
        Temperature boilingPoint,
        UnitSystem units
    )
    {
        var isSeaLevels =
            seaLevel is not null
            && Prediction.Of(measure, here, boilingPoint) is not null
            && !Prediction.IsKnownApart(measure, here, seaLevel);
        return Expected(measure, here, boilingPoint, units) + (isSeaLevels ? AsAtSeaLevel : "");
    }

    /// <summary>A prediction as a range: "42–49 mm".</summary>
    public static string Of(Prediction prediction, UnitSystem units) =>
        prediction.Measure == Measure.InternalTemperature && units == UnitSystem.Both
            ? $"{Range(prediction.Measure, prediction.Value, UnitSystem.Metric)} ({Range(prediction.Measure, prediction.Value, UnitSystem.UnitedStates)})"
            : Range(prediction.Measure, prediction.Value, units);

    /// <summary>A range in the class's unit; one number where both ends round to the same.</summary>
    public static string Range(Measure measure, Band<double> value, UnitSystem units)
    {
        var unit = ObservedUnit.For(measure, units);
        var (low, high) = (NumberText.Fixed(unit.Of(value.Low), unit.Decimals), NumberText.Fixed(unit.Of(value.High), unit.Decimals));
        return NumberText.WithUnit(
            low == high ? low
                : unit.Of(value.Low) < 0 ? $"{low.Replace('-', '−')} to {high.Replace('-', '−')}"
                : $"{low}–{high}",
            unit.Symbol
        );
    }
}
