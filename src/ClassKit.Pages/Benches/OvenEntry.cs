namespace ClassKit.Pages.Benches;

/// <summary>A line of a run sheet that names an oven, before those that say the same of several ovens are put together.</summary>
/// <param name="Oven">Which, from 1; 0 where several are meant.</param>
/// <param name="Before">What stands before the ovens: <c>Into</c>.</param>
/// <param name="After">What stands behind them; may be empty.</param>
/// <param name="Entry">The rest of the line.</param>
internal sealed record OvenEntry(int Oven, string Before, string After, RunEntry Entry);
