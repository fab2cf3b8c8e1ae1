namespace ClassKit.BenchPlans.Classes;

/// <summary>How long a dough may wait, in whole minutes.</summary>
/// <param name="MinMinutes">At least; 0 or more.</param>
/// <param name="MaxMinutes">At most; no less than <paramref name="MinMinutes"/>.</param>
public readonly record struct WaitWindow(int MinMinutes, int MaxMinutes)
{
    /// <summary>Where a method says nothing: up to 5 minutes, which no dough minds. Common practice, no source.</summary>
    public static WaitWindow Usual => new(0, 5);

    /// <summary>The next step follows at once.</summary>
    public static WaitWindow None => default;
}
