using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Observations;

namespace ClassKit.Lessons.Measured;

/// <summary>What a class measured of one thing of one bread, beside what was predicted.</summary>
/// <param name="Asked">What was measured, with the questions that the lesson's authors ask.</param>
/// <param name="Unit">The class's unit.</param>
/// <param name="Expected">The prediction in that unit; null where there is none.</param>
/// <param name="Points">Every measurement, by team and piece.</param>
public sealed record MeasuredQuantity(Observation Asked, ObservedUnit Unit, Band<double>? Expected, IReadOnlyList<MeasuredPoint> Points)
{
    /// <summary>The mean of each team's own, in the order in which they came.</summary>
    public IReadOnlyDictionary<string, double> TeamMeans { get; } =
        Points.GroupBy(point => point.Team).ToDictionary(team => team.Key, team => team.Average(point => point.Value));

    /// <summary>The mean of the teams' means, so that every team counts once; not a number without measurements.</summary>
    public double Mean => TeamMeans.Count == 0 ? double.NaN : TeamMeans.Values.Average();

    /// <summary>How the mean lies to the prediction, both as an instrument shows them.</summary>
    public AgainstForecast Lies =>
        TeamMeans.Count == 0 ? AgainstForecast.NotMeasured
        : Expected is not { } band ? AgainstForecast.NotPredicted
        : Shown(Mean) < Shown(band.Low) ? AgainstForecast.Less
        : Shown(Mean) > Shown(band.High) ? AgainstForecast.More
        : AgainstForecast.AsExpected;

    /// <summary>What the authors ask about what this class saw; null where it is as expected or nobody knows.</summary>
    public Exercises.Authoring.TextTemplate? Question =>
        Lies switch
        {
            AgainstForecast.Less => Asked.IfLess,
            AgainstForecast.More => Asked.IfMore,
            AgainstForecast.AsExpected or AgainstForecast.NotMeasured or AgainstForecast.NotPredicted => null,
        };

    private double Shown(double value) => Math.Round(value, Unit.Decimals, MidpointRounding.AwayFromZero);
}
