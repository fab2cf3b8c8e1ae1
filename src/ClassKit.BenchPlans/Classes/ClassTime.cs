namespace ClassKit.BenchPlans.Classes;

/// <summary>The class's period in whole minutes, counted from its beginning.</summary>
/// <param name="PeriodMinutes">From the beginning to the end; above 0.</param>
/// <param name="SetupMinutes">Set aside at the beginning: welcome, safety, forming teams; 0 or more.</param>
/// <param name="TastingMinutes">Set aside for measuring and tasting; 0 or more.</param>
/// <param name="CleanupMinutes">Set aside at the very end; 0 or more.</param>
public sealed record ClassTime(int PeriodMinutes, int SetupMinutes, int TastingMinutes, int CleanupMinutes)
{
    /// <summary>The minute at which work at the benches may begin.</summary>
    public int WorkFrom => SetupMinutes;

    /// <summary>
    /// Minutes that are left over at the end of the period, behind the cleaning up; 0 or more, and 0 until a plan has found them.
    /// </summary>
    public int SpareMinutes { get; init; }

    /// <summary>The minute at which all is cleaned up.</summary>
    public int DoneBy => PeriodMinutes - SpareMinutes;

    /// <summary>The minute at which every bread has to be ready, because the tasting begins.</summary>
    public int ReadyBy => DoneBy - CleanupMinutes - TastingMinutes;

    /// <summary>The minutes between the two; not above 0 where what is set aside fills the period.</summary>
    public int WorkMinutes => ReadyBy - WorkFrom;
}
