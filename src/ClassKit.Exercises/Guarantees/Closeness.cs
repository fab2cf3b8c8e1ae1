using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Guarantees;

/// <summary>When two values of a part can be taken for each other.</summary>
internal static class Closeness
{
    /// <summary>Beyond the slack with which <see cref="Tolerance.Accepts"/> forgives the last bits of a double.</summary>
    private const double Slack = 1e-8;

    /// <summary>True if no answer could be within tolerance of both.</summary>
    public static bool Apart(Part part, double one, double other) =>
        Math.Abs(one - other)
        > part.Tolerance.Around(one) + part.Tolerance.Around(other) + Slack * Math.Max(1, Math.Max(Math.Abs(one), Math.Abs(other)));
}
