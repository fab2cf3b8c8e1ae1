namespace ClassKit.BenchPlans.Plans;

/// <summary>Minutes of one member of a series, over all who make it.</summary>
/// <param name="Bread">Which bread, counted from 0.</param>
/// <param name="Least">The fewest, 0 or more.</param>
/// <param name="Most">The most, at least <paramref name="Least"/>.</param>
public readonly record struct SeriesMinutes(int Bread, int Least, int Most)
{
    internal static int Spread(IReadOnlyList<SeriesMinutes> times) => times.Max(time => time.Most) - times.Min(time => time.Least);
}
