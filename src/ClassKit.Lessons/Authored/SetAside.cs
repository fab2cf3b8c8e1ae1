namespace ClassKit.Lessons.Authored;

/// <summary>Minutes of a period in which nobody works at the benches.</summary>
/// <param name="SetupMinutes">At the beginning: welcome, safety, forming teams; 0 or more.</param>
/// <param name="TastingMinutes">For measuring and tasting, when every bread is ready; 0 or more.</param>
/// <param name="CleanupMinutes">At the very end; 0 or more.</param>
public sealed record SetAside(int SetupMinutes, int TastingMinutes, int CleanupMinutes)
{
    /// <summary>Where a lesson says nothing. Common practice, no source.</summary>
    public static SetAside Usual { get; } = new(10, 15, 10);
}
