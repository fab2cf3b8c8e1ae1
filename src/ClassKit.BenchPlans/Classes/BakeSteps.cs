namespace ClassKit.BenchPlans.Classes;

/// <summary>Steps of a bread from the one with which it goes into an oven to the one with which it comes out.</summary>
/// <param name="First">The first, counted from 0.</param>
/// <param name="Last">The last; at least <paramref name="First"/>.</param>
public readonly record struct BakeSteps(int First, int Last)
{
    /// <summary>How many steps; 1 or more.</summary>
    public int Count => Last - First + 1;

    /// <summary>True of its steps.</summary>
    public bool Holds(int step) => First <= step && step <= Last;
}
