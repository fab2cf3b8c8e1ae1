using ClassKit.BenchPlans.Classes;

namespace ClassKit.BenchPlans.Changes;

/// <summary>Something an instructor could change so that a class fits.</summary>
public abstract record PlanChange
{
    /// <summary>The class as it would be.</summary>
    public abstract BenchClass Apply(BenchClass bench);

    /// <summary>How much it asks of the instructor, to put smaller changes first; above 0. Our choice: no source ranks them.</summary>
    internal abstract int Size { get; }
}
