using ClassKit.Exercises.Effort;

namespace ClassKit.Exercises.Authoring;

/// <summary>Between what the effort of every variant of an exercise must lie, so that no student is dealt a harder one.</summary>
/// <param name="Low">Inclusive.</param>
/// <param name="High">Inclusive.</param>
/// <seealso cref="EffortMeasure"/>
public sealed record EffortBand(int Low, int High)
{
    /// <summary>True if an effort lies in the band.</summary>
    public bool Holds(int effort) => effort >= Low && effort <= High;
}
