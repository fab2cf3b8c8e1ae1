namespace ClassKit.Lessons.Sensory;

/// <summary>The three samples of one seat in a triangle test.</summary>
/// <param name="Seat">From 1.</param>
/// <param name="Order">From left to right: two letters alike and one odd, such as <c>ABA</c>.</param>
/// <param name="Codes">The number on each, in the same order: three digits each, all different.</param>
public sealed record TriangleServing(int Seat, string Order, IReadOnlyList<int> Codes)
{
    /// <summary>All six orders; each is served about equally often, so that no place is the odd one's.</summary>
    public static IReadOnlyList<string> Orders { get; } = ["ABB", "BAA", "AAB", "BBA", "ABA", "BAB"];

    /// <summary>The number on the sample that is other than the two others.</summary>
    public int Odd => Codes[Order.IndexOf(Order.Count(letter => letter == 'A') == 1 ? 'A' : 'B', StringComparison.Ordinal)];
}
