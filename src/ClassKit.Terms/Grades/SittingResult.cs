using ClassKit.Terms.Marks;

namespace ClassKit.Terms.Grades;

/// <summary>What one sitting is worth under the rule.</summary>
/// <param name="Attempt">The sitting.</param>
/// <param name="Share">After what lateness and the cap of a resit take, 0 to 1; null where nothing was marked.</param>
/// <param name="LateOff">The share taken off for lateness; 0 for none.</param>
/// <param name="IsCapped">True if it earned more than a resit can.</param>
public sealed record SittingResult(Attempt Attempt, decimal? Share, decimal LateOff, bool IsCapped);
