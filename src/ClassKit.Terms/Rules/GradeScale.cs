namespace ClassKit.Terms.Rules;

/// <summary>The grades that there are.</summary>
/// <param name="Steps">From the lowest, which begins at 0, to the highest; each begins above the one before.</param>
public sealed record GradeScale(IReadOnlyList<ScaleStep> Steps)
{
    /// <summary>The place of the grade that a rounded percentage earns.</summary>
    public int PlaceOf(decimal rounded)
    {
        var place = 0;
        while (place + 1 < Steps.Count && Steps[place + 1].From <= rounded)
            place++;
        return place;
    }
}
